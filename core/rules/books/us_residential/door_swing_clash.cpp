#include "core/rules/checks/doors.h"

namespace elbowroom::us_residential {

using namespace literals;

// The leaf is taken 1 in wider than it is, for the stand-off of its hinges (jlconline.com, clashing doors: W
// + 5/8 to 1 1/4 in).
Rule doorSwingClash() {
  return {
      .id = "door-swing-clash",
      .book = "us-residential",
      .title = "swing before it meets a fixture",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 90_deg,
      .measure = checks::doorSwings,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2705.1 item 6",
                 .read_at = "wording fragment quoted at shopdownhouse.com; item number from memory"},
      .grade = Grade::partial,
      .why = "A door that strikes a fixture cannot open fully, and the fixture gets damaged.",
      .limit_words = "the full swing of the leaf",
  };
}

}  // namespace elbowroom::us_residential
