#include "core/rules/checks/stated.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule toiletSeatHeight() {
  return {
      .id = "toilet-seat-height",
      .book = "ca-access",
      .title = "height of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 430_mm,
      .limit_high = 485_mm,
      .measure = checks::toiletSeatHeights,
      .source = {.document = "Ontario Building Code",
                 .edition = "2012 as amended to 2017",
                 .section = "3.8.3.9",
                 .read_at = "buildingcode.online"},
      .grade = Grade::verified,
      .why = "A seat as high as the chair makes moving over possible.",
  };
}

}  // namespace elbowroom::ca_access
