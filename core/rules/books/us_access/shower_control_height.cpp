#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

// Of a shower that one rolls into.
Rule showerControlHeight() {
  return {
      .id = "shower-control-height",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 48_in,
      .measure = checks::rollInControlHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.5.2 and 608.5.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The water is set from a chair.",
  };
}

}  // namespace elbowroom::us_access
