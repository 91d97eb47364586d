#include "core/rules/checks/ca_electrical.h"

namespace elbowroom::ca_electrical {

using namespace literals;

// Advised: the appendix tells the intent of a rule. Straight behind a basin only where the inside edge of
// the bowl is more than 450 mm off the wall.
Rule receptacleBehindBasin() {
  return {
      .id = "receptacle-behind-basin",
      .book = "ca-electrical",
      .title = "bowl before a receptacle",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 450_mm,
      .measure = checks::bowlsBeforeReceptacles,
      .source = {.document = "CSA C22.1",
                 .edition = "edition not named",
                 .section = "appendix B to 26-700",
                 .read_at = "oncodes.ca (reprint of CSA C22.1), appendix B"},
      .grade = Grade::verified,
      .why = "One should not reach across a full basin with a plug in the hand.",
      .mends = {Mend::slide, Mend::state},
  };
}

}  // namespace elbowroom::ca_electrical
