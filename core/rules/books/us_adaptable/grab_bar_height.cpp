#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule grabBarHeight() {
  return {
      .id = "grab-bar-height",
      .book = "us-adaptable",
      .title = "middle above the floor",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 33_in,
      .limit_high = 36_in,
      .measure = checks::grabBarCentres,
      .source = {.document = "Fair Housing Act Design Manual",
                 .edition = "1998",
                 .section = "chapter 6",
                 .read_at = "summary of chapter 6 at safetyinplace.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A bar at this height carries the weight of somebody who pushes up from it.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
