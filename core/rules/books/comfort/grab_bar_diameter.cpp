#include "core/rules/checks/grab_bars.h"

namespace elbowroom::comfort {

using namespace literals;

Rule grabBarDiameter() {
  return {
      .id = "grab-bar-diameter",
      .book = "comfort",
      .title = "thickness of the grip",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 1.25_in,
      .limit_high = 2_in,
      .measure = checks::grabBarDiameters,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 14",
                 .read_at = "jfjm100.com on guideline 14, quoting A117.1: 1 1/4 to 2 in in diameter"},
      .grade = Grade::verifiedSecondHand,
      .why = "A hand holds fast only what it can close round.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
