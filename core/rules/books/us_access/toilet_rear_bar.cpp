#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// In a dwelling the wall may be backed for a bar instead (exception 2).
Rule toiletRearBar() {
  return {
      .id = "toilet-rear-bar",
      .book = "us-access",
      .title = "bar behind it",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::toiletRearBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever moves over from beside the seat holds on behind it.",
      .met = "has a bar behind it, or backing for one",
      .missed = "no bar behind it, and no backing for one",
  };
}

}  // namespace elbowroom::us_access
