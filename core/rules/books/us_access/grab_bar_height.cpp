#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule grabBarHeight() {
  return {
      .id = "grab-bar-height",
      .book = "us-access",
      .title = "height of the bar",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 33_in,
      .limit_high = 36_in,
      .measure = checks::grabBarTops,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "609.4",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A bar at this height carries the weight of somebody who pushes up from it.",
  };
}

}  // namespace elbowroom::us_access
