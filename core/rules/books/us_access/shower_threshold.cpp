#include "core/rules/checks/stated.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerThreshold() {
  return {
      .id = "shower-threshold",
      .book = "us-access",
      .title = "threshold",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 0.5_in,
      .measure = checks::showerCurbs,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.7",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Wheels and tired feet get over it.",
  };
}

}  // namespace elbowroom::us_access
