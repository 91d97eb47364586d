#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule showerSize() {
  return {
      .id = "shower-size",
      .book = "us-adaptable",
      .title = "inside",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::soleShowerSides,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.3.3",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Where there is no bath, the shower holds a seat and somebody who helps.",
      .variants = {{.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
