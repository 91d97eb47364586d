#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule controlFromOutside() {
  return {
      .id = "control-from-outside",
      .book = "craft",
      .title = "reach from outside to the control",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::controlsFromOutside,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 10",
                 .read_at = "the association's own page on guideline 10: reached from inside "
                            "and outside; reach by ANSUR II"},
      .grade = Grade::derived,
      .why = "Whoever cannot reach it from outside steps in to open it.",
      .limit_words = "the forward reach of the shortest adult",
  };
}

}  // namespace elbowroom::craft
