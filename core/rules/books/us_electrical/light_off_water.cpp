#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule lightOffWater() {
  return {
      .id = "light-off-water",
      .book = "us-electrical",
      .title = "distance to the water",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::hangingLightsOffWater,
      .source =
          {.document = "NEC",
           .edition = "edition not named",
           .section = "410.10(D)",
           .read_at =
               "forum.nachi.org 10658 (quoted from 2005); rapidrepairs247.com (newer text in its words)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who stands in the bath should not be able to take hold of a lamp.",
      .sizes = {96_in},
      .variants = {{.setting = "edition",
                    .value = "2008",
                    .source = Source{.document = "NEC",
                                     .edition = "2005 (410.10(D) in 2008)",
                                     .section = "410.4(D)",
                                     .read_at = "forum.nachi.org 10658 (quoted)"}}},
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::us_electrical
