#include "core/rules/checks/door_parts.h"

namespace elbowroom::craft {

using namespace literals;

Rule doorCasingRoom() {
  return {
      .id = "door-casing-room",
      .book = "craft",
      .title = "wall beside the opening for the casing",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = 3_in,
      .measure = checks::doorCasings,
      .source = {.document = "Trade articles on door casings",
                 .edition = "",
                 .section = "",
                 .read_at = "brainwritings.com on cased openings; tommco.com door notes (2 1/4 in casing, "
                            "allow 3 in beside a jamb)"},
      .grade = Grade::verifiedSecondHand,
      .why = "With less the casing has to be cut lengthwise or left out.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::craft
