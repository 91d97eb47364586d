#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleCircuitAlone() {
  return {
      .id = "receptacle-circuit-alone",
      .book = "us-electrical",
      .title = "circuit of the receptacles",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::circuitsOfBathrooms,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.11(C)(3)",
                 .read_at = "electrical-contractor.net 8440 (quoted); howtowireahouse.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A dryer here should not put out the lights of another room.",
      .mends = {Mend::state},
      .met = "its receptacles share no circuit with other rooms",
      .missed = "its receptacles share a circuit with other rooms",
  };
}

}  // namespace elbowroom::us_electrical
