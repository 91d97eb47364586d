#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinHeightSeated() {
  return {
      .id = "basin-height-seated",
      .book = "comfort",
      .title = "height of the rim from a wheelchair",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::basinHeightsForChairs,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 7",
                 .read_at = "design-standards booklet page 48, quoting A117.1 606.3"},
      .grade = Grade::verifiedSecondHand,
      .why = "Above this the rim is at the chest of a person who sits.",
      .mends = {Mend::lower},
  };
}

}  // namespace elbowroom::comfort
