#include "core/rules/checks/showers.h"

namespace elbowroom::us_residential {

using namespace literals;

// Exception 2 lets one side go down to 25 in where the area is at least 1300 sq in.
Rule showerSize() {
  return {
      .id = "shower-size",
      .book = "us-residential",
      .title = "room for a disc within",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerDiscsOrLarge,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "trade association planning standards page 49; exception 2 at "
                            "howtolookatahouse.com 2018/6"},
      .grade = Grade::verifiedSecondHand,
      .why = "Narrower than this, elbows meet the walls and one cannot turn or bend.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_residential
