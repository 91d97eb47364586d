#include "core/rules/checks/door_parts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorUndercut() {
  return {
      .id = "door-undercut",
      .book = "comfort",
      .title = "gap under the door",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 0.75_in,
      .measure = checks::doorUndercuts,
      .source = {.document = "Home ventilation guidance",
                 .edition = "",
                 .section = "",
                 .read_at = "hometalk.com on bathroom ventilation (3/4 in under the door)"},
      .grade = Grade::verifiedSecondHand,
      .why = "A fan moves no air out when none can come in.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
