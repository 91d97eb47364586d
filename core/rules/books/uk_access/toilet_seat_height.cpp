#include "core/rules/checks/stated.h"

namespace elbowroom::uk_access {

using namespace literals;

Rule toiletSeatHeight() {
  return {
      .id = "toilet-seat-height",
      .book = "uk-access",
      .title = "height of the seat",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 480_mm,
      .limit_high = 480_mm,
      .measure = checks::toiletSeatHeights,
      .source = {.document = "Approved Document M",
                 .edition = "volume 2",
                 .section = "",
                 .read_at = "from memory, not checked"},
      .grade = Grade::memory,
      .why = "A seat as high as the chair makes moving over possible.",
      .variants = {{.setting = "dwelling", .value = "m4-1", .off = true},
                   {.setting = "dwelling", .value = "m4-2", .off = true},
                   {.setting = "dwelling", .value = "m4-3", .off = true}},
  };
}

}  // namespace elbowroom::uk_access
