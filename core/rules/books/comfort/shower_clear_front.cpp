#include "core/rules/checks/fronts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerClearFront() {
  return {
      .id = "shower-clear-front",
      .book = "comfort",
      .title = "clear floor in front of the entry",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::showerFronts,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "saniterra.pt rule 4; web copy of the planning textbook, fig 6.44"},
      .grade = Grade::verifiedSecondHand,
      .why = "Room to step out, turn and dry off.",
  };
}

}  // namespace elbowroom::comfort
