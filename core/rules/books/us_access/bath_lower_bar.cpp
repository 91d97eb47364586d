#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathLowerBar() {
  return {
      .id = "bath-lower-bar",
      .book = "us-access",
      .title = "lower bar above the rim",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 8_in,
      .limit_high = 10_in,
      .measure = checks::bathLowerBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.1.1 and 607.4.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits in the bath pushes up from it.",
  };
}

}  // namespace elbowroom::us_access
