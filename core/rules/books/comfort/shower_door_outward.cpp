#include "core/rules/checks/shower_doors.h"

namespace elbowroom::comfort {

Rule showerDoorOutward() {
  return {
      .id = "shower-door-outward",
      .book = "comfort",
      .title = "glass door",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::showerDoorsOutward,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 16",
                 .read_at = "bathroom planning textbook, guideline 16 (quoting IRC P2708.1)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who has fallen lies against a door that opens inward.",
      .mends = {Mend::otherSwing},
  };
}

}  // namespace elbowroom::comfort
