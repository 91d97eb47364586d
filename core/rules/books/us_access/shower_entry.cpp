#include "core/rules/checks/access_showers.h"

namespace elbowroom::us_access {

using namespace literals;

Rule showerEntry() {
  return {
      .id = "shower-entry",
      .book = "us-access",
      .title = "way in",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::showerEntries,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "608.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Chair and helper get in without catching the frame.",
      .limit_words = "36 in, 60 in for the standard roll-in kind",
      .sizes = {60_in},
  };
}

}  // namespace elbowroom::us_access
