#include "core/rules/checks/stated.h"

namespace elbowroom::au_access {

using namespace literals;

Rule basinProjection() {
  return {
      .id = "basin-projection",
      .book = "au-access",
      .title = "wall to its front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 430_mm,
      .measure = checks::basinProjections,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "access consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "Knees go in under the basin and hands reach the tap.",
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
