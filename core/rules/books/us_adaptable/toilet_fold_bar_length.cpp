#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletFoldBarLength() {
  return {
      .id = "toilet-fold-bar-length",
      .book = "us-adaptable",
      .title = "length",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 28_in,
      .measure = checks::foldBarLengths,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.1.1",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "It reaches past the knees of somebody who sits.",
      .variants = {{.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
