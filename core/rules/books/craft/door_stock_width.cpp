#include "core/rules/checks/door_parts.h"

namespace elbowroom::craft {

Rule doorStockWidth() {
  return {
      .id = "door-stock-width",
      .book = "craft",
      .title = "leaf",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::stockLeaves,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 1",
                 .read_at = "saniterra.pt rule 1: stock leaves 18, 20, 24, 28, 30, 32 and 36 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "Any other width is made to order and takes weeks.",
      .mends = {Mend::narrower, Mend::wider},
  };
}

}  // namespace elbowroom::craft
