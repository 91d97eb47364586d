#include "core/rules/checks/fronts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule bathClearFront() {
  return {
      .id = "bath-clear-front",
      .book = "comfort",
      .title = "clear floor along the open side",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::bathFronts,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "saniterra.pt rule 4"},
      .grade = Grade::verifiedSecondHand,
      .why = "Room to dry off, and to kneel when bathing a child.",
  };
}

}  // namespace elbowroom::comfort
