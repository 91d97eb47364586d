#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

using namespace literals;

Rule mirrorOverBacksplash() {
  return {
      .id = "mirror-over-backsplash",
      .book = "craft",
      .title = "lower edge over the backsplash",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::mirrorsOverBacksplash,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "A mirror cannot hang where the backsplash is; one that starts above it needs no cut.",
      .limit_words = "the top of the backsplash",
      .mends = {Mend::raise},
  };
}

}  // namespace elbowroom::craft
