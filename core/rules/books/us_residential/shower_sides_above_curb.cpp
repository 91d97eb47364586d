#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerSidesAboveCurb() {
  return {
      .id = "shower-sides-above-curb",
      .book = "us-residential",
      .title = "sides of the receptor above the curb",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1_in,
      .measure = checks::sidesAboveCurbs,
      .source = {.document = "IRC",
                 .edition = "2021",
                 .section = "P2709.1",
                 .read_at = "schluterutnv.blogspot.com 2024/09, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that rises must run out over the curb and not into the walls.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
