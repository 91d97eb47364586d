#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule fanFlow() {
  return {
      .id = "fan-flow",
      .book = "us-residential",
      .title = "air flow",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Amount::of(50),
      .measure = checks::fanFlows,
      .source = {.document = "IRC",
                 .edition = "2012 and 2015; M1505.4.4 from 2018, number from memory",
                 .section = "M1507.4",
                 .read_at = "homeownersnetwork.com on bathroom light and ventilation; jfjm100.com "
                            "guideline 26"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too little air, and the moisture stays on walls and in the ceiling.",
      .unit = "cfm",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
