#include "core/rules/checks/stated.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule basinHeight() {
  return {
      .id = "basin-height",
      .book = "us-adaptable",
      .title = "height of the rim",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::basinHeights,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.2.1.1",
                 .read_at = "table of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Sitting, one washes hands without water running down the sleeves.",
      .variants = {{.setting = "option", .value = "a", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
