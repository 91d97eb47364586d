#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

// Above the top of the drain, not above the floor outside: a common misreading.
Rule showerCurbAboveDrain() {
  return {
      .id = "shower-curb-above-drain",
      .book = "us-residential",
      .title = "top of the curb above the drain",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 2_in,
      .limit_high = 9_in,
      .measure = checks::curbsAboveDrains,
      .source = {.document = "IRC",
                 .edition = "2021",
                 .section = "P2709.1",
                 .read_at = "schluterutnv.blogspot.com 2024/09, the section quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Lower, and water runs over it when the drain backs up; higher, and one trips over it.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
