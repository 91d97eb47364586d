#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

// The 60 per cent of a wall that does not bear are from memory.
Rule studHole() {
  return {
      .id = "stud-hole",
      .book = "us-residential",
      .title = "hole in its studs",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 2.2_in,
      .measure = checks::studHoles,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R602.6",
                 .read_at = "hinarratives.com, quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "A vent bored through a bearing stud leaves two thin strips of wood.",
      .limit_words = "40 per cent of the stud, 60 where the wall does not bear",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
