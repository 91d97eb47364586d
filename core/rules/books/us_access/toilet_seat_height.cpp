#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

// The exception for dwelling units; elsewhere 17 to 19 in.
Rule toiletSeatHeight() {
  return {
      .id = "toilet-seat-height",
      .book = "us-access",
      .title = "height of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 19_in,
      .measure = checks::toiletSeatHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.4",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A seat as high as the chair makes moving over possible.",
      .variants = {{.setting = "unit", .value = "other", .limit = 17_in}},
  };
}

}  // namespace elbowroom::us_access
