#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule lightOverMirrorHeight() {
  return {
      .id = "light-over-mirror-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 75_in,
      .limit_high = 80_in,
      .measure = checks::lightOverMirrorHeights,
      .source = {.document = "Trade article on vanity lights",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, how high a vanity light should be mounted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Higher it lights the hair, lower it dazzles.",
  };
}

}  // namespace elbowroom::comfort
