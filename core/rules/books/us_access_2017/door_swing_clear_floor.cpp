#include "core/rules/checks/door_over_floor.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule doorSwingClearFloor() {
  return {
      .id = "door-swing-clear-floor",
      .book = "us-access-2017",
      .title = "door off the floor that fixtures need",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsOverClearFloor,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "With somebody at the basin or on the seat the door can still open, or there is a place to "
             "wait beyond it.",
      .sizes = {30_in, 52_in},
  };
}

}  // namespace elbowroom::us_access_2017
