#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletNearSide() {
  return {
      .id = "toilet-near-side",
      .book = "us-adaptable",
      .title = "centreline to the nearer side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 16_in,
      .measure = checks::toiletNearSides,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.2",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "There is room for the arm, and for a bar that may come later.",
      .variants = {{.setting = "option", .value = "b", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
