#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule hookHeight() {
  return {
      .id = "hook-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 55_in,
      .limit_high = 70_in,
      .measure = checks::hookHeights,
      .source = {.document = "Trade article on bathroom accessories",
                 .edition = "",
                 .section = "",
                 .read_at = "kadvacorp.com, bathroom accessories placement"},
      .grade = Grade::verifiedSecondHand,
      .why = "A robe hangs free of the floor and is in reach.",
  };
}

}  // namespace elbowroom::comfort
