#include "core/rules/checks/access_room.h"

namespace elbowroom::us_access {

using namespace literals;

// Instead of a turning space in a room with one toilet, one lavatory and one bath or shower.
Rule turningSpaceSmall() {
  return {
      .id = "turning-space-small",
      .book = "us-access",
      .title = "clear space of 30 by 60 in",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::turningRectangles,
      .source = {.document = "Uniform Federal Accessibility Standards",
                 .edition = "",
                 .section = "4.23.3",
                 .read_at = "corada.com, UFAS 4.23.3"},
      .grade = Grade::verified,
      .why = "In the smallest rooms a wheelchair has at least a place to stand clear of everything.",
      .sizes = {60_in, 30_in},
      .variants = {{.setting = "edition", .value = "2010", .off = true},
                   {.setting = "edition", .value = "1991", .off = true}},
  };
}

}  // namespace elbowroom::us_access
