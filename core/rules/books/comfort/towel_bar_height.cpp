#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule towelBarHeight() {
  return {
      .id = "towel-bar-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 42_in,
      .limit_high = 48_in,
      .measure = checks::towelBarHeights,
      .source = {.document = "Trade article on bathroom accessories",
                 .edition = "",
                 .section = "",
                 .read_at = "kadvacorp.com, bathroom accessories placement"},
      .grade = Grade::verifiedSecondHand,
      .why = "A towel hangs free of the floor and is in reach.",
  };
}

}  // namespace elbowroom::comfort
