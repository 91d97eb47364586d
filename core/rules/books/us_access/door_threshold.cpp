#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

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
  };
}

}  // namespace elbowroom::us_access
