#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerBarFromWall() {
  return {
      .id = "shower-bar-from-wall",
      .book = "us-access",
      .title = "distance from the wall beside it",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 6_in,
      .measure = checks::rollInBarsFromWalls,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "There is a bar to hold wherever one stops.",
  };
}

}  // namespace elbowroom::us_access
