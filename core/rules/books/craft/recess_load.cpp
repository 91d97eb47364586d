#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule recessLoad() {
  return {
      .id = "recess-load",
      .book = "craft",
      .title = "load on its wall",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::recessLoads,
      .source = {.document = "Trade article on framing a shower niche",
                 .edition = "",
                 .section = "",
                 .read_at = "protileinstaller.com, wall-to-wall niche guide: framed like a "
                            "window, with a header if the wall bears"},
      .grade = Grade::verifiedSecondHand,
      .why = "A stud that is cut in a wall that carries load needs a header; an engineer or "
             "the permit office says which.",
      .met = "cuts a stud of a wall that carries no load",
      .missed = "cuts a stud of a wall that carries load",
  };
}

}  // namespace elbowroom::craft
