#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule switchNotInWater() {
  return {
      .id = "switch-not-in-water",
      .book = "us-electrical",
      .title = "listing with the shower",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::switchesNotInWater,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "404.4(C)",
                 .read_at =
                     "electriciantalk.com, switches near shower spaces; electrical-contractor.net 8440"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wet hand on a switch under the spray is what this is about.",
      .met = "is not in a bath or shower",
      .missed = "is in a bath or shower",
  };
}

}  // namespace elbowroom::us_electrical
