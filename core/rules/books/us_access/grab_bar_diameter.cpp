#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule grabBarDiameter() {
  return {
      .id = "grab-bar-diameter",
      .book = "us-access",
      .title = "diameter",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 1.25_in,
      .limit_high = 2_in,
      .measure = checks::grabBarDiameters,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "609.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A hand closes round it.",
  };
}

}  // namespace elbowroom::us_access
