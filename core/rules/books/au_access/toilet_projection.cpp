#include "core/rules/checks/toilet_space.h"

namespace elbowroom::au_access {

using namespace literals;

Rule toiletProjection() {
  return {
      .id = "toilet-projection",
      .book = "au-access",
      .title = "rear wall to its front",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 790_mm,
      .limit_high = 810_mm,
      .measure = checks::toiletProjections,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "access consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair stands level with the seat.",
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
