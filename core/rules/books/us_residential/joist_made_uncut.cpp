#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

// I-joists, trusses, laminated and glued wood: no cut without the maker's word or an engineer's.
Rule joistMadeUncut() {
  return {
      .id = "joist-made-uncut",
      .book = "us-residential",
      .title = "cut joist",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::cutJoistsSolid,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.2",
                 .read_at = "quoted on trade and inspection pages about R502.8; the page was not noted"},
      .grade = Grade::verifiedSecondHand,
      .why =
          "A made joist or truss fails where it is cut, so its maker or an engineer decides, never a rule of "
          "thumb.",
      .mends = {Mend::state},
      .met = "the joists cut for it are solid wood",
      .missed = "cuts made joists or trusses, which nobody cuts without their maker or an engineer",
  };
}

}  // namespace elbowroom::us_residential
