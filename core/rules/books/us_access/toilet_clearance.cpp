#include "core/rules/checks/toilet_clearance.h"

namespace elbowroom::us_access {

using namespace literals;

// 60 in from the side wall by 56 in from the rear wall; 604.3.2 with its exception for dwellings.
Rule toiletClearance() {
  return {
      .id = "toilet-clearance",
      .book = "us-access",
      .title = "clear space about it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::toiletClearances,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.3.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair needs this space to come beside the seat.",
      .limit_words = "60 in wide and 56 in deep (66 in deep beside a basin)",
      .sizes = {56_in, 66_in, 18_in},
      .variants = {{.setting = "edition", .value = "1991", .off = true},
                   {.setting = "unit", .value = "other", .off = true}},
  };
}

}  // namespace elbowroom::us_access
