#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule holderBacked() {
  return {
      .id = "holder-backed",
      .book = "craft",
      .title = "backing behind it",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::holdersBacked,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plywood behind the finish of bathroom walls"},
      .grade = Grade::commonPractice,
      .why = "Plaster anchors work loose under towels and hands.",
      .met = "there is backing behind it",
      .missed = "no backing is behind it",
  };
}

}  // namespace elbowroom::craft
