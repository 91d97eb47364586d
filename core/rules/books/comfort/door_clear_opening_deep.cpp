#include "core/rules/checks/door_parts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorClearOpeningDeep() {
  return {
      .id = "door-clear-opening-deep",
      .book = "comfort",
      .title = "clear opening through a thick wall",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::deepDoorOpenings,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 1",
                 .read_at = "saniterra.pt rule 1 (opening deeper than 24 in, A117.1 404)"},
      .grade = Grade::verifiedSecondHand,
      .why = "In a passage one cannot turn the shoulders as in a doorway.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
