#include "core/rules/checks/stated_figures.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletRoughIn() {
  return {
      .id = "toilet-rough-in",
      .book = "comfort",
      .title = "rough-in",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::roughIns,
      .source = {.document = "Usual rough-in of toilets",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on toilet rough-in: 12 in from the finished wall to the middle "
                            "of the flange is usual; 10 and 14 in exist"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nearly every toilet is made for 12 inches, and for less there is little to choose from.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
