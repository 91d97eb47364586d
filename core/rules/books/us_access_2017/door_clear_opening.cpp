#include "core/rules/checks/doors.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule doorClearOpening() {
  return {
      .id = "door-clear-opening",
      .book = "us-access-2017",
      .title = "clear opening",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 32_in,
      .measure = checks::doorClearOpenings,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "404.2.2",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a walker passes, with hands on the wheels.",
  };
}

}  // namespace elbowroom::us_access_2017
