#include "core/rules/checks/access_room.h"

namespace elbowroom::us_access {

using namespace literals;

Rule turningU() {
  return {
      .id = "turning-u",
      .book = "us-access",
      .title = "space for a U-turn of 78 by 60 in",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::turningRectangles,
      .source = {.document = "1991 ADA Standards",
                 .edition = "",
                 .section = "A4.2.3",
                 .read_at = "ada.gov text of the 1991 standards, appendix figure A2"},
      .grade = Grade::verified,
      .why = "A wheelchair can turn round in one smooth sweep.",
      .sizes = {78_in, 60_in},
      .variants = {{.setting = "edition", .value = "2010", .off = true},
                   {.setting = "edition", .value = "ufas", .off = true}},
  };
}

}  // namespace elbowroom::us_access
