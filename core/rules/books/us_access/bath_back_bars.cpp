#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathBackBars() {
  return {
      .id = "bath-back-bars",
      .book = "us-access",
      .title = "bars behind it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Count{2},
      .measure = checks::bathBackBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.1.1 and 607.4.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "One bar helps to sit down and another to get up.",
  };
}

}  // namespace elbowroom::us_access
