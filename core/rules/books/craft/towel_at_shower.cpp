#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule towelAtShower() {
  return {
      .id = "towel-at-shower",
      .book = "craft",
      .title = "reach to a towel",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::towelsAtShowers,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "design standards booklet page 66: accessories near each "
                            "fixture; reach by ANSUR II"},
      .grade = Grade::derived,
      .why = "A towel out of reach means wet steps on the floor.",
      .limit_words = "the forward reach of the shortest adult",
  };
}

}  // namespace elbowroom::craft
