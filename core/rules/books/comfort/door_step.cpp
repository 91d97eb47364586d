#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorStep() {
  return {
      .id = "door-step",
      .book = "comfort",
      .title = "step at the door",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 0.5_in,
      .measure = checks::doorSteps,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 16",
                 .read_at = "design-standards booklet page 60, quoting A117.1 303: 1/4 in upright and "
                            "1/4 in beveled 1:2; more wants a ramp"},
      .grade = Grade::verifiedSecondHand,
      .why = "A floor built up for a shower without a curb moves the edge to the door of the room.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
