#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule mirrorOverBasin() {
  return {
      .id = "mirror-over-basin",
      .book = "us-access-2017",
      .title = "lower edge",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 40_in,
      .measure = checks::mirrorBottomsOverBasins,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.2",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who sits sees their face over the basin.",
  };
}

}  // namespace elbowroom::us_access_2017
