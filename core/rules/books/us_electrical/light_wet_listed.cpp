#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

// Subject to spray: our reading is a light at the shower, not higher than its head.
Rule lightWetListed() {
  return {
      .id = "light-wet-listed",
      .book = "us-electrical",
      .title = "listing for wet places",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsWet,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "410.10(D)",
                 .read_at = "rapidrepairs247.com (in its words)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that runs into a lamp makes its metal live.",
      .mends = {Mend::state},
      .met = "is listed for wet places",
      .missed = "is not listed for wet places",
  };
}

}  // namespace elbowroom::us_electrical
