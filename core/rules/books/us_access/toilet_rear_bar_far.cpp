#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// On a wall that leaves no 36 in a bar of 24 in, centred, will do (604.5.2, exception 1).
Rule toiletRearBarFar() {
  return {
      .id = "toilet-rear-bar-far",
      .book = "us-access",
      .title = "reach to the open side of the toilet",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::toiletRearBarsFar,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Whoever moves over from the open side holds on there.",
      .sizes = {36_in, 12_in},
  };
}

}  // namespace elbowroom::us_access
