#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule towelAtBasin() {
  return {
      .id = "towel-at-basin",
      .book = "craft",
      .title = "reach to a towel",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::towelsAtBasins,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "design standards booklet page 66: accessories near each "
                            "fixture; reach by ANSUR II"},
      .grade = Grade::derived,
      .why = "Wet hands drip on the way to a towel.",
      .limit_words = "the forward reach of the shortest adult",
  };
}

}  // namespace elbowroom::craft
