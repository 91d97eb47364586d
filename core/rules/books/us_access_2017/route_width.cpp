#include "core/rules/checks/routes.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule routeWidth() {
  return {
      .id = "route-width",
      .book = "us-access-2017",
      .title = "way to it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::routeWidths,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "",
                 .read_at = "extract of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair gets from the door to it.",
      .limit_words = "36 in; 32 in at one place, for at most 24 in",
      .sizes = {32_in, 24_in},
  };
}

}  // namespace elbowroom::us_access_2017
