#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

using namespace literals;

Rule paperHolderHeight() {
  return {
      .id = "paper-holder-height",
      .book = "craft",
      .title = "height of its centre",
      .level = Level::craft,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::paperHolderHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade "
                            "association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "design standards booklet pages 66 and 67, which quote A117.1 "
                            "604.7; 26 in recommended"},
      .grade = Grade::verifiedSecondHand,
      .why = "It is reached sitting, without bending or stretching; 26 in is usual.",
  };
}

}  // namespace elbowroom::craft
