#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule showerSidesAboveCurb() {
  return {
      .id = "shower-sides-above-curb",
      .book = "us-uniform",
      .title = "sides of the receptor above the curb",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1_in,
      .measure = checks::sidesAboveCurbs,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "408.5",
                 .read_at = "terrylove.com 57726, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that rises must run out over the curb and not into the walls.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
