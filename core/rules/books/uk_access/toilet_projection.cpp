#include "core/rules/checks/toilet_space.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletProjection() {
  return {
      .id = "toilet-projection",
      .book = "uk-access",
      .title = "rear wall to its front",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 750_mm,
      .limit_high = 750_mm,
      .measure = checks::toiletProjections,
      .source = {.document = "Approved Document M",
                 .edition = "volume 2",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "A wheelchair stands level with the seat.",
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
