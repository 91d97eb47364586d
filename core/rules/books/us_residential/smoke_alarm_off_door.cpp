#include "core/rules/checks/stated.h"

namespace elbowroom::us_residential {

using namespace literals;

// Unless that leaves no place for an alarm that is required: the permit office judges that.
Rule smokeAlarmOffDoor() {
  return {
      .id = "smoke-alarm-off-door",
      .book = "us-residential",
      .title = "smoke alarm to the door",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::smokeAlarmsFromDoors,
      .source = {.document = "IRC",
                 .edition = "2015",
                 .section = "R314.3(4)",
                 .read_at = "buildingcodetrainer.com on the places of smoke alarms; inspect2code.com"},
      .grade = Grade::verifiedSecondHand,
      .why =
          "Steam from a shower sets off an alarm near the door, and an alarm that cries wolf is taken down.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
