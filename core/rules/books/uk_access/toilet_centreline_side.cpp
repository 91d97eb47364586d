#include "core/rules/checks/sides.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "uk-access",
      .title = "centreline to the side wall",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 500_mm,
      .limit_high = 500_mm,
      .measure = checks::toiletSideWalls,
      .source = {.document = "Approved Document M",
                 .edition = "volume 2",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "Two inches decide whether a hand reaches the bar and an arm still finds room.",
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
