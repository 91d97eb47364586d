#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinHeightRange() {
  return {
      .id = "basin-height-range",
      .book = "comfort",
      .title = "height of the rim",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 32_in,
      .limit_high = 43_in,
      .measure = checks::basinHeightsForAnybody,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 7",
                 .read_at = "design-standards booklet page 48: 32 to 43 in, to fit the user"},
      .grade = Grade::verifiedSecondHand,
      .why = "Below it the back bends, above it water runs down the sleeves.",
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
