#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule washerStandpipe() {
  return {
      .id = "washer-standpipe",
      .book = "us-residential",
      .title = "standpipe above its trap",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 18_in,
      .limit_high = 42_in,
      .measure = checks::standpipes,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2706.1.2",
                 .read_at = "trade summaries of the section"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too low, and the washer pumps the drain over; too high, and it cannot pump up.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
