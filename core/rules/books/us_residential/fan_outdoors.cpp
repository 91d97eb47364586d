#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule fanOutdoors() {
  return {
      .id = "fan-outdoors",
      .book = "us-residential",
      .title = "fan",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::fansOutdoors,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R303.3, M1507.2",
                 .read_at = "homeownersnetwork.com on bathroom light and ventilation"},
      .grade = Grade::verifiedSecondHand,
      .why = "Moist air blown into an attic or crawl space rots the roof.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
