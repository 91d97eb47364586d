#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule controlOutOfSpray() {
  return {
      .id = "control-out-of-spray",
      .book = "craft",
      .title = "control out of the spray",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::controlsOutOfSpray,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 10",
                 .read_at = "the association's own page on guideline 10: reached from inside "
                            "and outside the spray; band of the spray by geometry, its "
                            "angles assumed"},
      .grade = Grade::derived,
      .why = "The first water is cold: the hand that opens it should stay dry.",
      .met = "is worked without a hand in the water",
      .missed = "is worked with the arm in the water",
  };
}

}  // namespace elbowroom::craft
