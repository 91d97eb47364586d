#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerSeatFromEntry() {
  return {
      .id = "shower-seat-from-entry",
      .book = "us-access",
      .title = "seat to the entry",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 3_in,
      .measure = checks::showerSeatsFromEntry,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "610.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "One slides onto the seat from the wheelchair outside.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_access
