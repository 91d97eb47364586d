#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule switchOutOfReach() {
  return {
      .id = "switch-out-of-reach",
      .book = "craft",
      .title = "switch out of reach of the water",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::switchesOutOfReach,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 24",
                 .read_at = "design standards booklet page 68: no switch within reach from a "
                            "bath or shower; reach by ANSUR II"},
      .grade = Grade::derived,
      .why = "Nobody should work a switch while standing in water; a licensed electrician places it.",
      .limit_words = "the forward reach of the tallest adult",
  };
}

}  // namespace elbowroom::craft
