#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerAlternateDepth() {
  return {
      .id = "shower-alternate-depth",
      .book = "us-access",
      .title = "inside, alternate kind",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 36_in,
      .limit_high = 36_in,
      .measure = checks::alternateDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Exactly this depth keeps bar and control in reach from the seat.",
  };
}

}  // namespace elbowroom::us_access
