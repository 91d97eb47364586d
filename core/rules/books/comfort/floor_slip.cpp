#include "core/rules/checks/rooms.h"

namespace elbowroom::comfort {

Rule floorSlip() {
  return {
      .id = "floor-slip",
      .book = "comfort",
      .title = "slip resistance of the floor",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::slipResistantFloor,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 18",
                 .read_at = "from memory; the wording of this guideline was not seen"},
      .grade = Grade::memory,
      .why = "Most bathroom accidents begin on wet tile.",
      .mends = {Mend::state},
      .met = "has a slip-resistant floor",
      .missed = "has a floor that is slippery when wet",
  };
}

}  // namespace elbowroom::comfort
