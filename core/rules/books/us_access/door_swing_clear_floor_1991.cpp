#include "core/rules/checks/door_over_floor.h"

namespace elbowroom::us_access {

Rule doorSwingClearFloor1991() {
  return {
      .id = "door-swing-clear-floor-1991",
      .book = "us-access",
      .title = "door off the floor that fixtures need",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsOverClearFloor,
      .source = {.document = "1991 ADA Standards",
                 .edition = "",
                 .section = "4.22.2",
                 .read_at = "ada.gov text of the 1991 standards"},
      .grade = Grade::verified,
      .why = "With somebody at the basin or on the seat the door can still open.",
      .variants = {{.setting = "edition", .value = "2010", .off = true},
                   {.setting = "edition", .value = "ufas", .off = true}},
  };
}

}  // namespace elbowroom::us_access
