#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// What reaches 12 in to one side and 24 in to the other is as long as 604.5.2 wants it (36 in).
Rule toiletRearBarNear() {
  return {
      .id = "toilet-rear-bar-near",
      .book = "us-access",
      .title = "reach to the near side of the toilet",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::toiletRearBarsNear,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A hand that reaches back to the near side finds the bar.",
  };
}

}  // namespace elbowroom::us_access
