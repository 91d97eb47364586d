#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule mirrorBottomSeated() {
  return {
      .id = "mirror-bottom-seated",
      .book = "comfort",
      .title = "lower edge for somebody seated",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 40_in,
      .measure = checks::mirrorBottomsForChair,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "design-standards booklet pages 66 and 67, quoting A117.1 603.3: reflecting "
                            "edge at most 40 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "From a wheelchair a higher mirror shows the wall behind.",
      .mends = {Mend::lower},
  };
}

}  // namespace elbowroom::comfort
