#include "core/rules/checks/toilet_clearance.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

// The basin beside the toilet may be 24 in deep at most.
Rule toiletClearance() {
  return {
      .id = "toilet-clearance",
      .book = "us-access-2017",
      .title = "clear space about it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::toiletClearances,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "1103.11.2.4",
                 .read_at = "extract of the 2017 standard made by others; manual of the 2009 one"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair needs this space to come beside the seat.",
      .limit_words = "60 in wide and 56 in deep (66 in deep beside a basin)",
      .sizes = {56_in, 66_in, 18_in, 24_in},
  };
}

}  // namespace elbowroom::us_access_2017
