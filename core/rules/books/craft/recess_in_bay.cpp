#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule recessInBay() {
  return {
      .id = "recess-in-bay",
      .book = "craft",
      .title = "between studs",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::recessBays,
      .source = {.document = "Trade article on framing a shower niche",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com, how to frame a shower niche; protileinstaller.com on "
                            "wide niches"},
      .grade = Grade::verifiedSecondHand,
      .why = "A cut stud has to be framed like a window, with a header if the wall bears load; ask a "
             "builder.",
      .met = "stands between two studs, or a header is planned",
      .missed = "meets a stud, and no header is stated",
  };
}

}  // namespace elbowroom::craft
