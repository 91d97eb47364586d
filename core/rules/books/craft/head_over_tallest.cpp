#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule headOverTallest() {
  return {
      .id = "head-over-tallest",
      .book = "craft",
      .title = "lower edge of the head",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::headsOverTallest,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense (trade articles: 72 to 80 in)"},
      .grade = Grade::commonPractice,
      .why = "The tallest stands under it without stooping.",
      .limit_words = "the height of the tallest",
  };
}

}  // namespace elbowroom::craft
