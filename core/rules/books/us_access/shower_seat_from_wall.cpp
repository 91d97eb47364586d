#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerSeatFromWall() {
  return {
      .id = "shower-seat-from-wall",
      .book = "us-access",
      .title = "seat to the wall behind it",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 2.5_in,
      .measure = checks::showerSeatsFromWall,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The wall is what one leans on.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_access
