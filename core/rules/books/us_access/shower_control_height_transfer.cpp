#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// Of a shower that one moves over into from the chair.
Rule showerControlHeightTransfer() {
  return {
      .id = "shower-control-height-transfer",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 38_in,
      .limit_high = 48_in,
      .measure = checks::transferControlHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.5.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The water is set from the seat.",
  };
}

}  // namespace elbowroom::us_access
