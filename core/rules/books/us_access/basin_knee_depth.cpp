#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

// At 9 in above the floor.
Rule basinKneeDepth() {
  return {
      .id = "basin-knee-depth",
      .book = "us-access",
      .title = "knee space, depth",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 11_in,
      .measure = checks::kneeDepths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "306.3.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The chair comes close enough for the hands to reach the tap.",
  };
}

}  // namespace elbowroom::us_access
