#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule recessDepth() {
  return {
      .id = "recess-depth",
      .book = "craft",
      .title = "depth into the wall",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::recessDepths,
      .source = {.document = "Trade article on shower niches",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, how deep a shower niche should be"},
      .grade = Grade::verifiedSecondHand,
      .why = "Deeper it comes out in the next room.",
      .limit_words = "the depth of the wall's studs",
  };
}

}  // namespace elbowroom::craft
