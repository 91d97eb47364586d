#include "core/rules/checks/stated.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule toiletSeatHeight() {
  return {
      .id = "toilet-seat-height",
      .book = "us-access-2017",
      .title = "height of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 19_in,
      .measure = checks::toiletSeatHeights,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.4",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A seat as high as the chair makes moving over possible.",
  };
}

}  // namespace elbowroom::us_access_2017
