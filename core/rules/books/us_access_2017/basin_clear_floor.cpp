#include "core/rules/checks/clear_floor.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule basinClearFloor() {
  return {
      .id = "basin-clear-floor",
      .book = "us-access-2017",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 52_in,
      .measure = checks::basinClearFloors,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "305.3",
                 .read_at = "ICC page of significant changes and two consultants' articles"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair rolls up to the basin from the front, with knees under it.",
      .limit_words = "30 in wide (36 in between walls) and 52 in deep (48 in existing buildings)",
      .sizes = {30_in, 24_in, 36_in, 17_in},
      .variants = {{.setting = "building", .value = "existing", .limit = 48_in}},
  };
}

}  // namespace elbowroom::us_access_2017
