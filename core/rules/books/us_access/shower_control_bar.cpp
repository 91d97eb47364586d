#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

// Only showers that have bars: in a home backing is enough.
Rule showerControlBar() {
  return {
      .id = "shower-control-bar",
      .book = "us-access",
      .title = "bar on the wall of the control",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::transferControlBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.3.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "One holds on there to move across from the wheelchair.",
      .met = "a bar is on the wall of the control",
      .missed = "no bar is on the wall of the control",
  };
}

}  // namespace elbowroom::us_access
