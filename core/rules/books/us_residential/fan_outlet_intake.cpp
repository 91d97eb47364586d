#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule fanOutletIntake() {
  return {
      .id = "fan-outlet-intake",
      .book = "us-residential",
      .title = "outlet to a fan-driven intake",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 120_in,
      .measure = checks::fanOutletIntakes,
      .source = {.document = "IRC",
                 .edition = "as adopted in Washington State",
                 .section = "M1504.3",
                 .read_at = "app.leg.wa.gov, WAC 51-51-1504 (state code)"},
      .grade = Grade::verified,
      .why = "A fan-driven intake pulls moist air from further away than a window does.",
      .sizes = {36_in},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
