#include "core/rules/checks/access_room.h"

namespace elbowroom::au_access {

using namespace literals;

Rule turningQuarter() {
  return {
      .id = "turning-quarter",
      .book = "au-access",
      .title = "space for a quarter turn, 1500 by 1500 mm",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::turningRectangles,
      .source = {.document = "AS 1428.1",
                 .edition = "2009",
                 .section = "",
                 .read_at = "consultant's audit checklist; moddex.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair turns a corner.",
      .sizes = {1500_mm, 1500_mm},
      .variants = {{.setting = "text", .value = "livable", .off = true}},
  };
}

}  // namespace elbowroom::au_access
