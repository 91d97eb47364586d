#include "core/rules/checks/door_parts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorThreshold() {
  return {
      .id = "door-threshold",
      .book = "comfort",
      .title = "threshold",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 0.5_in,
      .measure = checks::doorThresholdsForChair,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 16",
                 .read_at = "design-standards booklet page 60, quoting A117.1 303: 1/4 in upright and 1/4 "
                            "in beveled 1:2"},
      .grade = Grade::verifiedSecondHand,
      .why = "The small front wheels of a chair stop at a higher edge.",
      .mends = {Mend::lower},
  };
}

}  // namespace elbowroom::comfort
