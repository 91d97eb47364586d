#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule bathBackBarLength() {
  return {
      .id = "bath-back-bar-length",
      .book = "us-access",
      .title = "length",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::bathBackBarLengths,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.4.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Both hands find room on it.",
  };
}

}  // namespace elbowroom::us_access
