#include "core/rules/checks/mirrors.h"

namespace elbowroom::craft {

Rule mirrorItemWhole() {
  return {
      .id = "mirror-item-whole",
      .book = "craft",
      .title = "what hangs on the mirror",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::mirrorItemsWhole,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "not read anywhere; plain sense"},
      .grade = Grade::commonPractice,
      .why = "A light that lies half on the glass and half on the wall stands askew.",
      .met = "hangs on the glass, its box behind it",
      .missed = "hangs half on the mirror, half on the wall",
  };
}

}  // namespace elbowroom::craft
