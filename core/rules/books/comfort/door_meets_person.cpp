#include "core/rules/checks/doors.h"

namespace elbowroom::comfort {

// A standing person: 18 in deep (supplyht.com article 92491), 26.3 in wide (95 % man, elbow to elbow, ANSUR
// II).
Rule doorMeetsPerson() {
  return {
      .id = "door-meets-person",
      .book = "comfort",
      .title = "door and the person at the basin",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsAndPeople,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2; saniterra.pt rule 2"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nobody at the basin should be struck by somebody coming in.",
  };
}

}  // namespace elbowroom::comfort
