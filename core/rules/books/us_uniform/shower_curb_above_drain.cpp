#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Above the top of the drain, not above the floor outside: a common misreading.
Rule showerCurbAboveDrain() {
  return {
      .id = "shower-curb-above-drain",
      .book = "us-uniform",
      .title = "top of the curb above the drain",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 2_in,
      .limit_high = 9_in,
      .measure = checks::curbsAboveDrains,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "408.5",
                 .read_at = "terrylove.com 57726, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Lower, and water runs over it when the drain backs up; higher, and one trips over it.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
