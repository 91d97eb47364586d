#include "core/rules/checks/stated.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerSeatHeight() {
  return {
      .id = "shower-seat-height",
      .book = "comfort",
      .title = "seat, height",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 17_in,
      .limit_high = 19_in,
      .measure = checks::showerSeatHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 12",
                 .read_at = "design-standards booklet page 54: 17 to 19 in above the shower's floor"},
      .grade = Grade::verifiedSecondHand,
      .why = "From a lower seat one does not get up, on a higher one the feet hang.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
