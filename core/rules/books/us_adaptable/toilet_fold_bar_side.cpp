#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletFoldBarSide() {
  return {
      .id = "toilet-fold-bar-side",
      .book = "us-adaptable",
      .title = "centreline to what stands on its side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::foldBarSides,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.1.1",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A hand gets round the bar.",
      .variants = {{.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
