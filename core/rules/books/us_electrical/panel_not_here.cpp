#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule panelNotHere() {
  return {
      .id = "panel-not-here",
      .book = "us-electrical",
      .title = "breaker panel",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::panelsElsewhere,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "240.24(E)",
                 .read_at = "ecmweb.com, code questions 74"},
      .grade = Grade::verifiedSecondHand,
      .why = "Steam corrodes a panel, and nobody should handle it on a wet floor.",
      .met = "no breaker panel is drawn in it",
      .missed = "is in a bathroom",
  };
}

}  // namespace elbowroom::us_electrical
