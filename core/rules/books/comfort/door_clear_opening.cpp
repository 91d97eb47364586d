#include "core/rules/checks/doors.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "comfort",
      .title = "clear opening",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 32_in,
      .measure = checks::doorClearOpenings,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 1",
                 .read_at = "saniterra.pt rule 1; civilsnapshot.com/bathroom-doorway-details"},
      .grade = Grade::verifiedSecondHand,
      .why = "Furniture, a walker or two people side by side get through.",
  };
}

}  // namespace elbowroom::comfort
