#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule grabBarClearBelow() {
  return {
      .id = "grab-bar-clear-below",
      .book = "us-access",
      .title = "clear below it and at its ends",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1.5_in,
      .measure = checks::grabBarsAboveThings,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "609.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A hand gets round the bar all along.",
  };
}

}  // namespace elbowroom::us_access
