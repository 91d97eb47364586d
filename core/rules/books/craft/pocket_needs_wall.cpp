#include "core/rules/checks/doors.h"

namespace elbowroom::craft {

Rule pocketNeedsWall() {
  return {
      .id = "pocket-needs-wall",
      .book = "craft",
      .title = "wall for its pocket",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::pocketWalls,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, pocket door rough opening (36 in leaf: 73 in)"},
      .grade = Grade::verifiedSecondHand,
      .why = "The leaf has to disappear into the wall as far as it is wide.",
      .limit_words = "twice the leaf plus 1 in",
  };
}

}  // namespace elbowroom::craft
