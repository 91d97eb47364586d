#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule protrusion() {
  return {
      .id = "protrusion",
      .book = "us-access",
      .title = "how far it sticks out",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 4_in,
      .measure = checks::protrusions,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "307.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "A white cane does not find what begins above it.",
      .limit_words = "4 in, where it begins 27 to 80 in above the floor and nothing stands under it",
      .sizes = {27_in, 80_in},
  };
}

}  // namespace elbowroom::us_access
