#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

// 48 in from the control wall.
Rule showerTransferClearFloor() {
  return {
      .id = "shower-transfer-clear-floor",
      .book = "us-access",
      .title = "clear floor before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::transferClearances,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The chair stands square to the seat, a little past it, so that one moves over sideways.",
      .limit_words = "36 in deep over 48 in from the control wall",
      .sizes = {48_in},
  };
}

}  // namespace elbowroom::us_access
