#include "core/rules/checks/stated.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule basinHeight() {
  return {
      .id = "basin-height",
      .book = "us-access-2017",
      .title = "height of the rim",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::basinHeights,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.2",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Sitting, one washes hands without water running down the sleeves.",
  };
}

}  // namespace elbowroom::us_access_2017
