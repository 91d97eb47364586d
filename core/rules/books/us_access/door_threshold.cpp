#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

// 3/4 in where there is one already or it is altered, if both its edges are beveled at 1:2.
Rule doorThreshold() {
  return {
      .id = "door-threshold",
      .book = "us-access",
      .title = "threshold",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 0.5_in,
      .measure = checks::doorThresholds,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "404.2.5",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Small front wheels stop at anything higher.",
      .variants = {{.setting = "work", .value = "alteration", .limit = 0.75_in}},
  };
}

}  // namespace elbowroom::us_access
