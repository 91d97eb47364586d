#include "core/rules/checks/sides.h"

namespace elbowroom::us_access {

using namespace literals;

// A range with both ends gets no construction tolerance (104.1.1).
Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "us-access",
      .title = "centreline to the side wall",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 16_in,
      .limit_high = 18_in,
      .measure = checks::toiletSideWalls,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The grab bar on the side wall is within reach, and there is still room for the arm.",
      .variants = {{.setting = "edition", .value = "1991", .limit = 18_in, .limit_high = 18_in, .source = Source{.document = "1991 ADA Standards",
                            .edition = "",
                            .section = "figure 28",
                            .read_at = "ada.gov text of the 1991 standards"}}},
  };
}

}  // namespace elbowroom::us_access
