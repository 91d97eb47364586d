#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// In a dwelling the wall may be backed for a bar instead (exception 2). The side wall is where 604.2 wants one.
Rule toiletSideBar() {
  return {
      .id = "toilet-side-bar",
      .book = "us-access",
      .title = "bar beside it",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletSideBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever gets up or moves over from a chair holds on at the side.",
      .sizes = {24_in},
      .met = "has a bar beside it, or backing for one",
      .missed = "no bar beside it, and no backing for one",
  };
}

}  // namespace elbowroom::us_access
