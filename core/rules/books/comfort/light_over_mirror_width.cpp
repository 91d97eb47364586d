#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

using namespace literals;

Rule lightOverMirrorWidth() {
  return {
      .id = "light-over-mirror-width",
      .book = "comfort",
      .title = "width",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::lightOverMirrorWidths,
      .source = {.document = "Trade article on vanity lights",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on the height of vanity lights: at least 36 in long"},
      .grade = Grade::verifiedSecondHand,
      .why = "A short one over a mirror leaves both cheeks in shadow.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
