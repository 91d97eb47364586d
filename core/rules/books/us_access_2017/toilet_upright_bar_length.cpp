#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule toiletUprightBarLength() {
  return {
      .id = "toilet-upright-bar-length",
      .book = "us-access-2017",
      .title = "length",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::uprightBarLengths,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "604.5.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Tall and short people find it at their height.",
  };
}

}  // namespace elbowroom::us_access_2017
