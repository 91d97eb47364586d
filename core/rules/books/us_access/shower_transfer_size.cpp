#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

// An absolute figure at the middle of the sides: a larger one is no transfer shower.
Rule showerTransferSize() {
  return {
      .id = "shower-transfer-size",
      .book = "us-access",
      .title = "inside, transfer kind",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 36_in,
      .limit_high = 36_in,
      .measure = checks::transferSides,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Exactly this size puts seat, bar and control within one reach.",
  };
}

}  // namespace elbowroom::us_access
