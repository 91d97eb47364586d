#include "core/rules/checks/routes.h"

namespace elbowroom::us_access {

using namespace literals;

// The narrow place of at most 24 in was read in an extract made by others.
Rule routeWidth() {
  return {
      .id = "route-width",
      .book = "us-access",
      .title = "way to it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::routeWidths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "403.5.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair gets from the door to it.",
      .limit_words = "36 in; 32 in at one place, for at most 24 in",
      .sizes = {32_in, 24_in},
  };
}

}  // namespace elbowroom::us_access
