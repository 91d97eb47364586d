#include "core/rules/checks/grab_bars.h"

namespace elbowroom::us_access {

using namespace literals;

Rule toiletSideBarEnd() {
  return {
      .id = "toilet-side-bar-end",
      .book = "us-access",
      .title = "reach from the wall behind",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 54_in,
      .measure = checks::toiletSideBarEnds,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "604.5.1",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "The bar goes on to where one pulls oneself up.",
  };
}

}  // namespace elbowroom::us_access
