#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerRollInClearFloor() {
  return {
      .id = "shower-roll-in-clear-floor",
      .book = "us-access",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::rollInClearances,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair comes to the shower along its whole open side.",
  };
}

}  // namespace elbowroom::us_access
