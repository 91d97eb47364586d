#include "core/rules/checks/bath_space.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule bathClearFloor() {
  return {
      .id = "bath-clear-floor",
      .book = "us-access-2017",
      .title = "clear floor along it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathClearances,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.5.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair comes alongside, and one moves over onto the edge or a seat.",
      .sizes = {12_in, 1_in},
  };
}

}  // namespace elbowroom::us_access_2017
