#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathBackBarControl() {
  return {
      .id = "bath-back-bar-control",
      .book = "us-access",
      .title = "distance from the control end",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 12_in,
      .measure = checks::bathBackBarsFromControl,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.1.1 and 607.4.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who gets up at the control end holds on there.",
  };
}

}  // namespace elbowroom::us_access
