#include "core/rules/checks/vanities.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toeSpaceHeight() {
  return {
      .id = "toe-space-height",
      .book = "comfort",
      .title = "toe space, height",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 3.5_in,
      .measure = checks::toeSpaceHeights,
      .source = {.document = "Trade articles on toe kicks",
                 .edition = "",
                 .section = "",
                 .read_at = "ess2go.com and engineerfix.com on toe kicks: 3 1/2 to 4 in high"},
      .grade = Grade::verifiedSecondHand,
      .why = "A shoe has to fit under the front.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 4_in}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
