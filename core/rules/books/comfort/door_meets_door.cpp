#include "core/rules/checks/doors.h"

namespace elbowroom::comfort {

Rule doorMeetsDoor() {
  return {
      .id = "door-meets-door",
      .book = "comfort",
      .title = "doors that meet",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorPairs,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2; saniterra.pt rule 2"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two doors that meet damage each other and can trap a hand.",
  };
}

}  // namespace elbowroom::comfort
