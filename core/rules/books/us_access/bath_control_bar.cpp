#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathControlBar() {
  return {
      .id = "bath-control-bar",
      .book = "us-access",
      .title = "length",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::bathControlBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.1.2 and 607.4.2.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever steps in at the control end holds on there.",
  };
}

}  // namespace elbowroom::us_access
