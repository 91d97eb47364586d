#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerSeatHeight() {
  return {
      .id = "shower-seat-height",
      .book = "us-access",
      .title = "height of its seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 17_in,
      .limit_high = 19_in,
      .measure = checks::showerSeatHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A seat as high as the chair makes moving over possible.",
  };
}

}  // namespace elbowroom::us_access
