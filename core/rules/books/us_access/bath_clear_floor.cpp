#include "core/rules/checks/bath_space.h"

namespace elbowroom::us_access {

using namespace literals;

// As long as the bath; 12 in past its head end where a seat is built in there.
Rule bathClearFloor() {
  return {
      .id = "bath-clear-floor",
      .book = "us-access",
      .title = "clear floor along it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathClearances,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair comes alongside, and one moves over onto the edge or a seat.",
      .sizes = {12_in},
  };
}

}  // namespace elbowroom::us_access
