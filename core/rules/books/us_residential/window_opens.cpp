#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

// Half of the 3 sq ft.
Rule windowOpens() {
  return {
      .id = "window-opens",
      .book = "us-residential",
      .title = "part of the glass that opens",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(216),
      .measure = checks::windowOpens,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R303.3",
                 .read_at = "homeownersnetwork.com on bathroom light and ventilation; engineerfix.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "Only what opens lets moist air out.",
  };
}

}  // namespace elbowroom::us_residential
