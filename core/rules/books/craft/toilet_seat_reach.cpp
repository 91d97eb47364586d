#include "core/rules/checks/electrical.h"

namespace elbowroom::craft {

using namespace literals;

Rule toiletSeatReach() {
  return {
      .id = "toilet-seat-reach",
      .book = "craft",
      .title = "cord of an electric seat",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = 36_in,
      .measure = checks::receptaclesAtToilets,
      .source = {.document = "Trade articles on electric toilet seats",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on outlets for a washing seat; bidetwise.com on electric seats: "
                            "cords of 3 to 4 ft"},
      .grade = Grade::verifiedSecondHand,
      .why = "The cord of a washing seat is short, and an extension has no place there.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::craft
