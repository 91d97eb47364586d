#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule wallItemUnderCeiling() {
  return {
      .id = "wall-item-under-ceiling",
      .book = "craft",
      .title = "upper edge under the ceiling",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::itemsUnderCeiling,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "Under a slope the wall ends sooner than one thinks.",
      .limit_words = "the ceiling over it",
  };
}

}  // namespace elbowroom::craft
