#include "core/rules/checks/windows.h"

namespace elbowroom::us_residential {

// 3 sq ft; a fan may stand in for the window.
Rule windowGlass() {
  return {
      .id = "window-glass",
      .book = "us-residential",
      .title = "glass of the windows",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(432),
      .measure = checks::windowGlass,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R303.3",
                 .read_at = "homeownersnetwork.com on bathroom light and ventilation; engineerfix.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "Daylight and air keep a bathroom dry where no fan does it.",
  };
}

}  // namespace elbowroom::us_residential
