#include "core/rules/checks/access_room.h"

namespace elbowroom::au_access {

using namespace literals;

Rule turningHalf() {
  return {
      .id = "turning-half",
      .book = "au-access",
      .title = "space to turn round, 2070 by 1540 mm",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::turningRectangles,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "consultant's audit checklist"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair can turn round instead of backing out.",
      .sizes = {2070_mm, 1540_mm},
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
