#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

// Other exceptions (a sealed closet, small room heaters) are for the permit office to judge.
Rule heaterFuel() {
  return {
      .id = "heater-fuel",
      .book = "us-residential",
      .title = "heater",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::heaterFuels,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "G2406.2, M2005.2",
                 .read_at = "forum.nachi.org/t/56352; inspectionnews.net 34441"},
      .grade = Grade::verifiedSecondHand,
      .why = "A flame in a small closed room uses up its air, so gas work is for licensed trades.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
