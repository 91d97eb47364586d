#include "core/rules/checks/grab_bars.h"

namespace elbowroom::comfort {

using namespace literals;

Rule grabBarGap() {
  return {
      .id = "grab-bar-gap",
      .book = "comfort",
      .title = "gap to the wall",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 1.5_in,
      .limit_high = 1.5_in,
      .measure = checks::grabBarGaps,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 14",
                 .read_at = "jfjm100.com on guideline 14, quoting A117.1: 1 1/2 in off the wall"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nearer a hand does not close round it; further an arm slips in behind it and is caught.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
