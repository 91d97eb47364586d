#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

// Three walls without a seat, none at the seat. Only showers that have bars: in a home backing is enough.
Rule showerRollInBars() {
  return {
      .id = "shower-roll-in-bars",
      .book = "us-access",
      .title = "walls with a bar",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Count{3},
      .measure = checks::rollInWallsWithBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Wherever one rolls to, there is something to hold.",
      .limit_words = "all walls but the one of the seat",
  };
}

}  // namespace elbowroom::us_access
