#include "core/rules/checks/wall_items.h"

namespace elbowroom::us_access {

using namespace literals;

Rule handSprayHose() {
  return {
      .id = "hand-spray-hose",
      .book = "us-access",
      .title = "length of the hose",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 59_in,
      .measure = checks::hoses,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "607.6 and 608.6",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The spray reaches somebody who sits.",
  };
}

}  // namespace elbowroom::us_access
