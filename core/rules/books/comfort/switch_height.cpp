#include "core/rules/checks/reach.h"

namespace elbowroom::comfort {

using namespace literals;

Rule switchHeight() {
  return {
      .id = "switch-height",
      .book = "comfort",
      .title = "height",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::switchHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 25",
                 .read_at = "design-standards booklet page 69: control at 15 to 48 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "A child or somebody seated has to reach the light.",
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
