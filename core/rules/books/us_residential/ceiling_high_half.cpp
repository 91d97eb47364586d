#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

// Advised: the text speaks of required floor area, and a bathroom has none of its own.
Rule ceilingHighHalf() {
  return {
      .id = "ceiling-high-half",
      .book = "us-residential",
      .title = "floor under a ceiling of 7 ft",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(1),
      .measure = checks::highHalf,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R305.1 exception 1",
                 .read_at = "nachi.org f18/69727, quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Under a roof at least half of the room must let a tall person stand upright.",
      .limit_words = "half of the floor under a ceiling of 5 ft",
      .sizes = {84_in, 60_in},
      .variants = {{.setting = "state", .value = "minnesota", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
