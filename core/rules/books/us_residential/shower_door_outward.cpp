#include "core/rules/checks/shower_doors.h"

namespace elbowroom::us_residential {

// The commercial plumbing text is silent on it, and California dropped it.
Rule showerDoorOutward() {
  return {
      .id = "shower-door-outward",
      .book = "us-residential",
      .title = "shower door",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::showerDoorsOutward,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "jfjm100.com guideline 16, which cites it; thebuildingcodeforum.com 11056 and "
                            "34175 on other codes"},
      .grade = Grade::verifiedSecondHand,
      .why = "A person who has fallen inside must not block the door.",
  };
}

}  // namespace elbowroom::us_residential
