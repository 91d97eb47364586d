#include "core/rules/checks/clear_floor.h"

namespace elbowroom::us_access {

using namespace literals;

// Knee and toe space counts (305.4). The space need not be centred on the basin. In a dwelling a cabinet may
// stand there that can be taken out (606.2 exception 3): then the 17 in of toe space count that must be there
// without it (306.2.3).
Rule basinClearFloor() {
  return {
      .id = "basin-clear-floor",
      .book = "us-access",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::basinClearFloors,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "606.2, 305.3 and 305.7.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair rolls up to the basin from the front, with knees under it.",
      .limit_words = "30 in wide (36 in between walls) and 48 in deep",
      .sizes = {30_in, 24_in, 36_in, 17_in},
      .variants = {{.setting = "unit", .value = "other", .off = true},
                   {.setting = "edition", .value = "1991", .off = true}},
  };
}

}  // namespace elbowroom::us_access
