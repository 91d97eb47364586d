#include "core/rules/checks/reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule paperHolderAhead() {
  return {
      .id = "paper-holder-ahead",
      .book = "us-access",
      .title = "middle in front of the bowl",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 7_in,
      .limit_high = 9_in,
      .measure = checks::paperHoldersAhead,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.7",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Paper is in reach of somebody who sits and must not turn.",
  };
}

}  // namespace elbowroom::us_access
