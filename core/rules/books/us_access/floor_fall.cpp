#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

// 1:48; a floor that falls to the shower's drain only within the shower meets it.
Rule floorFall() {
  return {
      .id = "floor-fall",
      .book = "us-access",
      .title = "fall of the floor",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = Amount{2083},
      .measure = checks::floorFalls,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "304.2 and 305.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "On a slope a wheelchair turns and rolls away by itself.",
      .limit_words = "1 in 48 (2.08 %)",
      .unit = "%",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_access
