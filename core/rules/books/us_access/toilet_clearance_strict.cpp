#include "core/rules/checks/toilet_clearance.h"

namespace elbowroom::us_access {

using namespace literals;

// Without the exception for dwellings no basin may stand in the space.
Rule toiletClearanceStrict() {
  return {
      .id = "toilet-clearance-strict",
      .book = "us-access",
      .title = "clear space about it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::toiletClearances,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair needs this space to come beside the seat, with nothing else in it.",
      .limit_words = "60 in wide and 56 in deep",
      .sizes = {56_in},
      .variants = {{.setting = "unit", .value = "dwelling", .off = true},
                   {.setting = "edition", .value = "1991", .off = true}},
  };
}

}  // namespace elbowroom::us_access
