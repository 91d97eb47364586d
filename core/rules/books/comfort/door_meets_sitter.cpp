#include "core/rules/checks/doors.h"

namespace elbowroom::comfort {

Rule doorMeetsSitter() {
  return {
      .id = "door-meets-sitter",
      .book = "comfort",
      .title = "door and the person on the toilet",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsAndSitters,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2 (a person at a fixture); knees 0.352 of the "
                            "stature, from memory; elbows 26.3 in, ANSUR II"},
      .grade = Grade::derived,
      .why = "Nobody who sits there should be struck in the knees by somebody coming in.",
      .mends = {Mend::slide, Mend::otherHand, Mend::otherSwing, Mend::otherAction},
  };
}

}  // namespace elbowroom::comfort
