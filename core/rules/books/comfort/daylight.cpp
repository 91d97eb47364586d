#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

Rule daylight() {
  return {
      .id = "daylight",
      .book = "comfort",
      .title = "glass of the windows",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(432),
      .measure = checks::daylight,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R303.3",
                 .read_at = "homeownersnetwork.com on bathroom light and ventilation; engineerfix.com: 3 sq ft "
                            "of glass; held here as advice also for a room with a fan"},
      .grade = Grade::verifiedSecondHand,
      .why = "Daylight shows a face as others see it.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
