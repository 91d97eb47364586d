#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathBackBarHead() {
  return {
      .id = "bath-back-bar-head",
      .book = "us-access",
      .title = "distance from the head end",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 24_in,
      .measure = checks::bathBackBarsFromHead,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.1.1 and 607.4.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody who lies in the bath reaches the bar.",
      .limit_words = "24 in; 15 in with a seat built in at the head end",
      .sizes = {15_in},
  };
}

}  // namespace elbowroom::us_access
