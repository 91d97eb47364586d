#include "core/rules/checks/door_parts.h"

namespace elbowroom::us_access {

using namespace literals;

// Openings deeper than 24 in.
Rule doorClearOpeningDeep() {
  return {
      .id = "door-clear-opening-deep",
      .book = "us-access",
      .title = "clear opening through a thick wall",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::deepDoorOpenings,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "404.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "In a passage one cannot turn the shoulders as in a doorway.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_access
