#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleCircuit() {
  return {
      .id = "receptacle-circuit",
      .book = "us-electrical",
      .title = "rating of its circuit",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Amount::of(20),
      .measure = checks::receptacleCircuits,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.11(C)(3)",
                 .read_at = "electrical-contractor.net 8440 (quoted); howtowireahouse.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A hair dryer alone takes most of a smaller circuit.",
      .unit = "A",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_electrical
