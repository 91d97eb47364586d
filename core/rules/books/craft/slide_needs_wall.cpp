#include "core/rules/checks/doors.h"

namespace elbowroom::craft {

Rule slideNeedsWall() {
  return {
      .id = "slide-needs-wall",
      .book = "craft",
      .title = "free wall to slide along",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::slideWalls,
      .source = {.document = "Geometry of a sliding leaf",
                 .edition = "",
                 .section = "",
                 .read_at = "free wall beside the opening of at least the door"},
      .grade = Grade::derived,
      .why = "The leaf has to move clear of the opening.",
      .limit_words = "the width of the leaf",
  };
}

}  // namespace elbowroom::craft
