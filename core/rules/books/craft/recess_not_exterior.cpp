#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule recessNotExterior() {
  return {
      .id = "recess-not-exterior",
      .book = "craft",
      .title = "exterior wall",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::recessesInside,
      .source = {.document = "Trade article on framing a shower niche",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, how to frame a shower niche"},
      .grade = Grade::verifiedSecondHand,
      .why = "It takes the place of insulation: the tile sweats and pipes behind it freeze.",
      .met = "is in an inside wall",
      .missed = "is in an exterior wall",
  };
}

}  // namespace elbowroom::craft
