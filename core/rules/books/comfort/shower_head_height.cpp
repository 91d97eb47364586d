#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerHeadHeight() {
  return {
      .id = "shower-head-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 72_in,
      .limit_high = 80_in,
      .measure = checks::showerHeadHeights,
      .source = {.document = "Trade article on bathroom measurements",
                 .edition = "",
                 .section = "",
                 .read_at = "bandddesign.com, bathroom measurements"},
      .grade = Grade::verifiedSecondHand,
      .why = "The water should come from above the head of whoever stands there.",
  };
}

}  // namespace elbowroom::comfort
