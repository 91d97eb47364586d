#include "core/rules/checks/toilet_space.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletCompartmentDepth() {
  return {
      .id = "toilet-compartment-depth",
      .book = "comfort",
      .title = "compartment, depth",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 66_in,
      .measure = checks::compartmentDepths,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 21",
                 .read_at = "design-standards booklet page 64; jfjm100.com on the toilet compartment"},
      .grade = Grade::verifiedSecondHand,
      .why = "One has to turn round and shut the door before the toilet.",
      .sizes = {66_in},
  };
}

}  // namespace elbowroom::comfort
