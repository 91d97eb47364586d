#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule joistHole() {
  return {
      .id = "joist-hole",
      .book = "us-residential",
      .title = "hole in the joist",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 3_in,
      .measure = checks::joistHoles,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.1",
                 .read_at = "hinarratives.com (R802.7.1, the same text, quoted); "
                            "nationshomeinspections.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A drain bored too wide or too near to an edge weakens the floor it runs under.",
      .limit_words = "a third of the depth of the joist, 2 in from its edges",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
