#include "core/rules/checks/fronts.h"

namespace elbowroom::us_residential {

using namespace literals;

// Measured over the width of the fixture with doors closed: the text gives no width, and code officials read
// "door" as the closed door; a leaf that sweeps through is a separate warning.
Rule toiletClearFront() {
  return {
      .id = "toilet-clear-front",
      .book = "us-residential",
      .title = "clear floor in front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 21_in,
      .measure = checks::toiletFronts,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::verifiedSecondHand,
      .why = "Knees and feet need this floor to sit down and stand up.",
  };
}

}  // namespace elbowroom::us_residential
