#include "core/rules/checks/stated_figures.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerSeatDepth() {
  return {
      .id = "shower-seat-depth",
      .book = "comfort",
      .title = "seat, depth",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::showerSeatDepths,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 12",
                 .read_at = "design-standards booklet page 54: 15 in deep"},
      .grade = Grade::verifiedSecondHand,
      .why = "One slides off a shallower seat.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
