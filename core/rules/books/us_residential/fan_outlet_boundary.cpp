#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule fanOutletBoundary() {
  return {
      .id = "fan-outlet-boundary",
      .book = "us-residential",
      .title = "outlet to the property line",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::fanOutletBoundaries,
      .source = {.document = "IRC",
                 .edition = "as adopted in Washington State",
                 .section = "M1504.3",
                 .read_at = "app.leg.wa.gov, WAC 51-51-1504 (state code)"},
      .grade = Grade::verified,
      .why = "The neighbour keeps clean air at the fence.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
