#include "core/rules/checks/wet.h"

namespace elbowroom::us_residential {

Rule showerSeatArea() {
  return {
      .id = "shower-seat-area",
      .book = "us-residential",
      .title = "area left beside the built-in seat",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(900),
      .measure = checks::seatLeavesArea,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "howtolookatahouse.com 2018/6; homeownersnetwork.com on plumbing fixtures"},
      .grade = Grade::verifiedSecondHand,
      .why = "A fixed bench takes floor that one needs to wash standing up.",
  };
}

}  // namespace elbowroom::us_residential
