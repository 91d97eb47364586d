#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule openingUnderCeiling() {
  return {
      .id = "opening-under-ceiling",
      .book = "craft",
      .title = "head under the ceiling",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = Length{},
      .measure = checks::openingsUnderCeiling,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "A door or window that reaches above the ceiling cannot be built.",
      .limit_words = "the ceiling over it",
  };
}

}  // namespace elbowroom::craft
