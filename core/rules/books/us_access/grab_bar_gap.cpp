#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// The figure is absolute, not a least one.
Rule grabBarGap() {
  return {
      .id = "grab-bar-gap",
      .book = "us-access",
      .title = "gap to the wall",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 1.5_in,
      .limit_high = 1.5_in,
      .measure = checks::grabBarGaps,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "609.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A hand gets round the bar and an arm does not slip in behind it.",
  };
}

}  // namespace elbowroom::us_access
