#include "core/rules/checks/doors.h"

namespace elbowroom::us_residential {

using namespace literals;

// A warning: nearly all officials in the thread measure to the closed door, one jurisdiction to the open
// one.
Rule doorCrowdsFront() {
  return {
      .id = "door-crowds-front",
      .book = "us-residential",
      .title = "floor left before a fixture while it opens",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 21_in,
      .measure = checks::doorsBeforeFixtures,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com thread on clearance in front of toilets; "
                            "inspectionnews.net t-7150"},
      .grade = Grade::verifiedSecondHand,
      .why =
          "Somebody who stands or sits there is struck when the door opens; some inspectors measure to "
          "the open door.",
  };
}

}  // namespace elbowroom::us_residential
