#include "core/rules/checks/bath_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerBackBar() {
  return {
      .id = "shower-back-bar",
      .book = "us-access",
      .title = "reach from the wall of the control",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::transferBackBars,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.3.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The bar goes on round the corner to where one sits.",
  };
}

}  // namespace elbowroom::us_access
