#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerControlFromSeat() {
  return {
      .id = "shower-control-from-seat",
      .book = "us-access",
      .title = "distance from the wall behind the seat",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 27_in,
      .measure = checks::controlsFromSeats,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.5.2 and 608.5.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The water is set from the seat.",
  };
}

}  // namespace elbowroom::us_access
