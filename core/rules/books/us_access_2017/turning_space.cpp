#include "core/rules/checks/access_room.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

// The text lets a T-shaped space stand instead; the measure knows only the circle, and the words say so.
// New buildings: knee and toe space counts for at most 10 in (304.3.1.1.1).
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
                 .section = "304.3.1.1",
                 .read_at = "ICC page of significant changes and two consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nine of ten people in wheelchairs of today turn round in this circle.",
      .limit_words = "67 in across; the T-shaped spaces that the text allows instead are not looked for",
      .sizes = {10_in},
      .variants = {{.setting = "building", .value = "existing", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
