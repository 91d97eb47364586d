#include "core/rules/checks/room.h"

namespace elbowroom::us_access {

using namespace literals;

// Either the circle, knee and toe space counted, or the T: a plan that passes by the T must not fail.
Rule turningSpace() {
  return {
      .id = "turning-space",
      .book = "us-access",
      .title = "turning circle",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::turningSpace,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "304.3.1 or 304.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair can turn round instead of backing out.",
      .variants = {{.setting = "edition", .value = "ufas", .off = true}},
  };
}

}  // namespace elbowroom::us_access
