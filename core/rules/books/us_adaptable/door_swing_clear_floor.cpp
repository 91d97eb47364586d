#include "core/rules/checks/door_over_floor.h"

namespace elbowroom::us_adaptable {

using namespace literals;

// Knee and toe space does not count for the space beyond the arc.
Rule doorSwingClearFloor() {
  return {
      .id = "door-swing-clear-floor",
      .book = "us-adaptable",
      .title = "door off the floor that fixtures need",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsOverClearFloor,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.2.1",
                 .read_at = "manual of the 2009 standard and table of the 2017 one, both made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "With somebody at the basin or on the seat the door can still open, or there is a place to "
             "wait beyond it.",
      .sizes = {30_in, 48_in},
      .variants = {{.setting = "text", .value = "fair-housing", .source = Source{.document = "Fair Housing Accessibility Guidelines",
                            .edition = "1991",
                            .section = "",
                            .read_at = "from memory, the text was not found"}, .grade = Grade::memory}},
  };
}

}  // namespace elbowroom::us_adaptable
