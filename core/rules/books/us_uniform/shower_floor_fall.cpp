#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

// The text says 1/4 to 1/2 in per foot (2 to 4 per cent); either way of stating an end is met.
Rule showerFloorFall() {
  return {
      .id = "shower-floor-fall",
      .book = "us-uniform",
      .title = "fall of the floor to the drain",
      .level = Level::required,
      .compare = Compare::between,
      .limit = Amount::of(2),
      .limit_high = Amount{4167},
      .measure = checks::showerFalls,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "408.5",
                 .read_at = "terrylove.com 57726, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Less leaves puddles, more is a slope to slip on.",
      .unit = "%",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
