#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// What begins and ends where 604.5.1 wants it is as long as it wants it (42 in).
Rule toiletSideBarStart() {
  return {
      .id = "toilet-side-bar-start",
      .book = "us-access",
      .title = "distance from the wall behind",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 12_in,
      .measure = checks::toiletSideBarStarts,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The hand finds the bar where the body leans back.",
  };
}

}  // namespace elbowroom::us_access
