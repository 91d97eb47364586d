#include "core/rules/checks/sides.h"

namespace elbowroom::ca_access {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "ca-access",
      .title = "centreline to the side wall",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 460_mm,
      .limit_high = 480_mm,
      .measure = checks::toiletSideWalls,
      .source = {.document = "CSA B651",
                 .edition = "",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "Two inches decide whether a hand reaches the bar and an arm still finds room.",
      .variants = {{.setting = "text", .value = "ontario", .off = true},
                   {.setting = "text", .value = "national", .off = true}},
  };
}

}  // namespace elbowroom::ca_access
