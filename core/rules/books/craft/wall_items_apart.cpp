#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule wallItemsApart() {
  return {
      .id = "wall-items-apart",
      .book = "craft",
      .title = "place of its own",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::itemsApart,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "Two things cannot be screwed to the same place.",
      .met = "nothing else is there",
      .missed = "is where another thing is",
  };
}

}  // namespace elbowroom::craft
