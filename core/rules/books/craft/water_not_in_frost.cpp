#include "core/rules/checks/wall_items.h"

namespace elbowroom::craft {

Rule waterNotInFrost() {
  return {
      .id = "water-not-in-frost",
      .book = "craft",
      .title = "frost",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::waterFrost,
      .source = {.document = "Trade article on pipes in exterior walls",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com, insulating pipes in an exterior wall"},
      .grade = Grade::verifiedSecondHand,
      .why = "A pipe in a cold wall freezes and bursts.",
      .met = "its pipes are protected from frost",
      .missed = "its pipes are in an exterior wall without protection",
  };
}

}  // namespace elbowroom::craft
