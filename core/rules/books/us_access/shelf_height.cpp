#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule shelfHeight() {
  return {
      .id = "shelf-height",
      .book = "us-access",
      .title = "height",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 40_in,
      .limit_high = 48_in,
      .measure = checks::shelfTops,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "603.4",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "What stands on it is in reach of somebody who sits.",
  };
}

}  // namespace elbowroom::us_access
