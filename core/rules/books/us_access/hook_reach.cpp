#include "core/rules/checks/wall_items.h"

namespace elbowroom::us_access {

using namespace literals;

Rule hookReach() {
  return {
      .id = "hook-reach",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::hookHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "603.4 and 308",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who sits hangs up a gown without help.",
  };
}

}  // namespace elbowroom::us_access
