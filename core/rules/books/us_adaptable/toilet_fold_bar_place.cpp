#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletFoldBarPlace() {
  return {
      .id = "toilet-fold-bar-place",
      .book = "us-adaptable",
      .title = "middle to the centreline",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15.75_in,
      .limit_high = 15.75_in,
      .measure = checks::foldBarsFromCentreline,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.1.1",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "An arm that hangs down finds it, and the hips pass.",
      .variants = {{.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
