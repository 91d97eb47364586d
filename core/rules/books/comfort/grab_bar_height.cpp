#include "core/rules/checks/reach.h"

namespace elbowroom::comfort {

using namespace literals;

Rule grabBarHeight() {
  return {
      .id = "grab-bar-height",
      .book = "comfort",
      .title = "top of the grip",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 33_in,
      .limit_high = 36_in,
      .measure = checks::grabBarHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 14",
                 .read_at = "jfjm100.com on guideline 14, quoting A117.1: 33 to 36 in to the top of the "
                            "grip"},
      .grade = Grade::verifiedSecondHand,
      .why = "Higher or lower an arm cannot push the body up.",
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
