#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule controlReach() {
  return {
      .id = "control-reach",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::operablePartHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "308.2 and 308.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits works the switch.",
      .limit_words =
          "15 to 48 in; less high where one reaches over something: 44 in beyond 20 in with knees under "
          "it, 46 in beyond 10 in without",
      .sizes = {20_in, 44_in, 10_in, 46_in},
  };
}

}  // namespace elbowroom::us_access
