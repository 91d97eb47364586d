#include "core/rules/checks/access_room.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

// New buildings: knee and toe space counts for at most 10 in of the circle (304.3.1.1.1). The three T-shaped
// spaces of 304.3.2.1, on the bare floor: what may lie over knee space there was not read.
Rule turningSpace() {
  return {
      .id = "turning-space",
      .book = "us-access-2017",
      .title = "turning circle",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 67_in,
      .measure = checks::circleUnderBasins,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "304.3.1.1 or 304.3.2.1",
                 .read_at = "ICC page of significant changes and two consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nine of ten people in wheelchairs of today turn round in this circle.",
      .limit_words = "67 in across, or one of the three T-shaped spaces of the text on the bare floor",
      .sizes = {10_in,                             // of knee space
                68_in, 60_in, 36_in, 36_in, 8_in,  // bar and base 36 in, corners cut off
                64_in, 60_in, 38_in, 42_in, {},    // bar 38 in, base 42 in
                64_in, 60_in, 40_in, 40_in, {}},   // bar and base 40 in
      .variants = {{.setting = "building", .value = "existing", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
