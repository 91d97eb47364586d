#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// A seat that is built in; one that is put on is 15 to 16 in deep.
Rule bathSeatDepth() {
  return {
      .id = "bath-seat-depth",
      .book = "us-access",
      .title = "depth of the seat",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::bathSeatDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A shallower seat does not hold somebody safely.",
  };
}

}  // namespace elbowroom::us_access
