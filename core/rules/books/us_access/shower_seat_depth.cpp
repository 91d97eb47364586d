#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_access {

using namespace literals;

// A rectangular seat, from the wall behind it to its front edge.
Rule showerSeatDepth() {
  return {
      .id = "shower-seat-depth",
      .book = "us-access",
      .title = "depth of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 16_in,
      .measure = checks::showerSeatDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "It holds somebody safely and leaves room to turn.",
  };
}

}  // namespace elbowroom::us_access
