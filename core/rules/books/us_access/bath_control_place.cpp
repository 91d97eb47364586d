#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// On an end wall, between rim and bar, between the open side and the middle of the bath.
Rule bathControlPlace() {
  return {
      .id = "bath-control-place",
      .book = "us-access",
      .title = "place of the control",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::bathControlPlaces,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.5",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The water is set from outside, before anybody gets in.",
      .met = "is within reach from outside the bath",
      .missed = "is not on an end wall, above the rim and toward the open side",
  };
}

}  // namespace elbowroom::us_access
