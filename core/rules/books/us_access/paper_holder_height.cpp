#include "core/rules/checks/in_walls.h"

namespace elbowroom::us_access {

using namespace literals;

Rule paperHolderHeight() {
  return {
      .id = "paper-holder-height",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::paperHolderHeights,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.7",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Paper is in reach of somebody who sits.",
  };
}

}  // namespace elbowroom::us_access
