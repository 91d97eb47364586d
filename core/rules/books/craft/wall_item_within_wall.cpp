#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule wallItemWithinWall() {
  return {
      .id = "wall-item-within-wall",
      .book = "craft",
      .title = "within its wall",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::itemsWithinWalls,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "What is wider than its wall, or hangs past its end, cannot be put up.",
      .met = "is within its wall",
      .missed = "reaches past the end of its wall",
  };
}

}  // namespace elbowroom::craft
