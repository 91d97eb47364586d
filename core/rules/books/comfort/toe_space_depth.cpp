#include "core/rules/checks/vanities.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toeSpaceDepth() {
  return {
      .id = "toe-space-depth",
      .book = "comfort",
      .title = "toe space, depth",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 3_in,
      .measure = checks::toeSpaceDepths,
      .source = {.document = "Trade articles on toe kicks",
                 .edition = "",
                 .section = "",
                 .read_at = "ess2go.com and engineerfix.com on toe kicks: 3 in deep; deeper does no harm"},
      .grade = Grade::verifiedSecondHand,
      .why = "Without it one stands with the feet back and the back bent.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
