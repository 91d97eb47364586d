#include "core/rules/checks/seated_reach.h"

namespace elbowroom::us_access {

using namespace literals;

Rule mirrorTop() {
  return {
      .id = "mirror-top",
      .book = "us-access",
      .title = "upper edge",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 74_in,
      .measure = checks::mirrorUpperEdges,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "advisory 603.3",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Those who stand see themselves in the same mirror.",
  };
}

}  // namespace elbowroom::us_access
