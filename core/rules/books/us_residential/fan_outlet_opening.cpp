#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule fanOutletOpening() {
  return {
      .id = "fan-outlet-opening",
      .book = "us-residential",
      .title = "outlet to a window or door",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::fanOutletOpenings,
      .source = {.document = "IRC",
                 .edition = "as adopted in Washington State",
                 .section = "M1504.3",
                 .read_at = "app.leg.wa.gov, WAC 51-51-1504 (state code)"},
      .grade = Grade::verified,
      .why = "Moist air must not come back in by the next window.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
