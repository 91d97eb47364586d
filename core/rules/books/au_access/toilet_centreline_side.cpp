#include "core/rules/checks/sides.h"

namespace elbowroom::au_access {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "au-access",
      .title = "centreline to the side wall",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 450_mm,
      .limit_high = 460_mm,
      .measure = checks::toiletSideWalls,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "Two inches decide whether a hand reaches the bar and an arm still finds room.",
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
