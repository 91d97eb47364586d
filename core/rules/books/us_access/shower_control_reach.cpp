#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerControlReach() {
  return {
      .id = "shower-control-reach",
      .book = "us-access",
      .title = "place toward the entry from the middle of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = Length{},
      .limit_high = 15_in,
      .measure = checks::transferControlReaches,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.5.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The water is set from the seat and from outside.",
      .limit_words = "0 to 15 in; the seat is taken as deep as the shower",
  };
}

}  // namespace elbowroom::us_access
