#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule ceilingOverShower() {
  return {
      .id = "ceiling-over-shower",
      .book = "us-residential",
      .title = "ceiling over the 30 in square at the shower head",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 80_in,
      .measure = checks::ceilingsOverShowers,
      .source = {.document = "IRC",
                 .edition = "2009; 2015 and later",
                 .section = "R305.1",
                 .read_at = "nachi.org f18/69727 and inspectionnews.net t-23080, both quote it"},
      .grade = Grade::verifiedSecondHand,
      .why = "One stands upright under the head and lifts the arms.",
      .sizes = {30_in},
  };
}

}  // namespace elbowroom::us_residential
