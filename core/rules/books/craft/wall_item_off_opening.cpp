#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule wallItemOffOpening() {
  return {
      .id = "wall-item-off-opening",
      .book = "craft",
      .title = "wall behind it",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::itemsOffOpenings,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "Nothing can be fixed to a door or a window.",
      .met = "there is wall behind it",
      .missed = "is over an opening",
  };
}

}  // namespace elbowroom::craft
