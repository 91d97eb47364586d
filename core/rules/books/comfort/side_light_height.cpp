#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule sideLightHeight() {
  return {
      .id = "side-light-height",
      .book = "comfort",
      .title = "height of its centreline",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 60_in,
      .limit_high = 66_in,
      .measure = checks::sideLightHeights,
      .source = {.document = "Trade article on bathroom lighting heights",
                 .edition = "",
                 .section = "",
                 .read_at = "papirmass.com, bathroom lighting height rules (others: at most 60; 60 "
                            "to 70)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Light at eye level leaves no shadows on a face.",
  };
}

}  // namespace elbowroom::comfort
