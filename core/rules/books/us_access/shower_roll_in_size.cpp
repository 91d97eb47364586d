#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerRollInSize() {
  return {
      .id = "shower-roll-in-size",
      .book = "us-access",
      .title = "inside, roll-in kind",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::rollInSizes,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A wheelchair rolls in and stands under the water.",
      .limit_words = "30 in deep and 60 in wide",
      .sizes = {60_in},
  };
}

}  // namespace elbowroom::us_access
