#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathSeatHeight() {
  return {
      .id = "bath-seat-height",
      .book = "us-access",
      .title = "height of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 17_in,
      .limit_high = 19_in,
      .measure = checks::bathSeatHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A seat as high as the chair makes moving over possible.",
  };
}

}  // namespace elbowroom::us_access
