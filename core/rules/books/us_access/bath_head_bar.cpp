#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathHeadBar() {
  return {
      .id = "bath-head-bar",
      .book = "us-access",
      .title = "length",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::bathHeadBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever steps in at the head end holds on there.",
  };
}

}  // namespace elbowroom::us_access
