#include "core/rules/checks/wet.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerSeatSide() {
  return {
      .id = "shower-seat-side",
      .book = "us-residential",
      .title = "narrowest side left beside the built-in seat",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::seatLeavesSide,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "howtolookatahouse.com 2018/6; homeownersnetwork.com on plumbing fixtures"},
      .grade = Grade::verifiedSecondHand,
      .why = "Beside a fixed bench there must be room to turn and bend.",
  };
}

}  // namespace elbowroom::us_residential
