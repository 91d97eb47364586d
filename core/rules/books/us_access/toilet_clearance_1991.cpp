#include "core/rules/checks/toilet_clearance.h"

namespace elbowroom::us_access {

using namespace literals;

// A lavatory may stand beside the toilet from 18 in off its centreline. 56 in of depth is for coming from
// the side.
Rule toiletClearance1991() {
  return {
      .id = "toilet-clearance-1991",
      .book = "us-access",
      .title = "clear space about it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::toiletClearances,
      .source = {.document = "1991 ADA Standards",
                 .edition = "",
                 .section = "figure 28",
                 .read_at = "ada.gov text of the 1991 standards"},
      .grade = Grade::verified,
      .why = "A wheelchair needs this space to come before or beside the seat.",
      .limit_words = "48 in wide and 56 in deep, 66 in deep where one comes from the front",
      .sizes = {56_in, 56_in, 18_in},
      .variants = {{.setting = "edition", .value = "2010", .off = true},
                   {.setting = "edition", .value = "ufas", .off = true}},
  };
}

}  // namespace elbowroom::us_access
