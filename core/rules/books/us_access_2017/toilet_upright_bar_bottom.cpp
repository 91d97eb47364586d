#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule toiletUprightBarBottom() {
  return {
      .id = "toilet-upright-bar-bottom",
      .book = "us-access-2017",
      .title = "lower end",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 39_in,
      .limit_high = 41_in,
      .measure = checks::uprightBarBottoms,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "604.5.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "It begins above the level bar and within reach.",
  };
}

}  // namespace elbowroom::us_access_2017
