#include "core/rules/checks/sides.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "us-access-2017",
      .title = "centreline to the side wall",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 16_in,
      .limit_high = 18_in,
      .measure = checks::toiletSideWalls,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.4",
                 .read_at = "extract of the 2017 standard made by others; manual of the 2009 one"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two inches decide whether a hand reaches the bar and an arm still finds room.",
  };
}

}  // namespace elbowroom::us_access_2017
