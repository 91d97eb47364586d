#include "core/rules/checks/reach.h"

namespace elbowroom::comfort {

using namespace literals;

Rule storageReach() {
  return {
      .id = "storage-reach",
      .book = "comfort",
      .title = "height to reach it",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 15_in,
      .limit_high = 48_in,
      .measure = checks::storeHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 22",
                 .read_at = "design-standards booklet page 65: 15 to 48 in, over a counter 20 to 25 in "
                            "deep at most 44 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "What is kept where it is used has to be within everybody's reach.",
      .sizes = {20_in, 25_in, 44_in},
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
