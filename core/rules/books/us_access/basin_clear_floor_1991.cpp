#include "core/rules/checks/clear_floor.h"

namespace elbowroom::us_access {

using namespace literals;

// At most 19 in of it under the basin.
Rule basinClearFloor1991() {
  return {
      .id = "basin-clear-floor-1991",
      .book = "us-access",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::basinClearFloors,
      .source = {.document = "1991 ADA Standards",
                 .edition = "",
                 .section = "figure 32",
                 .read_at = "ada.gov, description of figure 32"},
      .grade = Grade::verified,
      .why = "A wheelchair rolls up to the basin from the front, with knees under it.",
      .limit_words = "30 in wide and 48 in deep, at most 19 in of it under the basin",
      .sizes = {30_in, Length{}, Length{}, Length{}, 19_in},
      .variants = {{.setting = "edition", .value = "2010", .off = true},
                   {.setting = "edition", .value = "ufas", .off = true}},
  };
}

}  // namespace elbowroom::us_access
