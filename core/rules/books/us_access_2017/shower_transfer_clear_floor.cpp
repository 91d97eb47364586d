#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule showerTransferClearFloor() {
  return {
      .id = "shower-transfer-clear-floor",
      .book = "us-access-2017",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::transferClearances,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "608.2.1",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "The chair stands square to the seat, a little past it, so that one moves over sideways.",
      .limit_words = "36 in deep over 52 in from the control wall",
      .sizes = {52_in},
      .variants = {{.setting = "building", .value = "existing", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
