#include "core/rules/checks/clear_floor.h"

namespace elbowroom::us_access {

using namespace literals;

// Other buildings than dwellings: a cabinet that can be taken out does not count as taken out.
Rule basinClearFloorStrict() {
  return {
      .id = "basin-clear-floor-strict",
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
      .sizes = {30_in, 24_in, 36_in},
      .variants = {{.setting = "unit", .value = "dwelling", .off = true},
                   {.setting = "edition", .value = "1991", .off = true}},
  };
}

}  // namespace elbowroom::us_access
