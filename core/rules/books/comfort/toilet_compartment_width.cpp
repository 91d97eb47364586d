#include "core/rules/checks/toilet_space.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletCompartmentWidth() {
  return {
      .id = "toilet-compartment-width",
      .book = "comfort",
      .title = "compartment, width",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::compartmentWidths,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 21",
                 .read_at = "design-standards booklet page 64; jfjm100.com on the toilet compartment"},
      .grade = Grade::verifiedSecondHand,
      .why = "Between two walls elbows need the width that a single side wall would leave free.",
  };
}

}  // namespace elbowroom::comfort
