#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerOpenFloor() {
  return {
      .id = "shower-open-floor",
      .book = "comfort",
      .title = "shorter side of its open floor",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 72_in,
      .measure = checks::openWetFloors,
      .source = {.document = "Trade articles on showers without a door",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on walk-in showers: a fully open wet floor 72 by 72 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "With no glass at all the spray needs that much floor to fall on.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
