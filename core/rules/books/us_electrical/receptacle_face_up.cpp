#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleFaceUp() {
  return {
      .id = "receptacle-face-up",
      .book = "us-electrical",
      .title = "listing for a counter",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesNotFacingUp,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "406.5",
                 .read_at = "naffainc.com, bathrooms"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that is spilled on a counter runs into what faces up.",
      .mends = {Mend::state},
      .met = "does not face up from the counter",
      .missed = "faces up from the counter",
  };
}

}  // namespace elbowroom::us_electrical
