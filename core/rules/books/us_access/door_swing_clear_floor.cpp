#include "core/rules/checks/door_over_floor.h"

namespace elbowroom::us_access {

using namespace literals;

// Exception 2: in a room for one person a 30 by 48 in space beyond the arc is enough, turned any way.
Rule doorSwingClearFloor() {
  return {
      .id = "door-swing-clear-floor",
      .book = "us-access",
      .title = "door off the floor that fixtures need",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsOverClearFloor,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "603.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "With somebody at the basin or on the seat the door can still open, or there is a place to "
             "wait beyond it.",
      .sizes = {30_in, 48_in},
      .variants = {{.setting = "edition", .value = "1991", .off = true}},
  };
}

}  // namespace elbowroom::us_access
