#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule nicheHeight() {
  return {
      .id = "niche-height",
      .book = "comfort",
      .title = "lower edge above the floor",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 48_in,
      .limit_high = 60_in,
      .measure = checks::nicheHeights,
      .source = {.document = "Trade article on shower niches",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, best place for a shower niche; about 40 in for a child "
                            "or somebody seated"},
      .grade = Grade::verifiedSecondHand,
      .why = "Bottles stand in reach and in sight.",
  };
}

}  // namespace elbowroom::comfort
