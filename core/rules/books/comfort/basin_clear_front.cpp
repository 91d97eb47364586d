#include "core/rules/checks/fronts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinClearFront() {
  return {
      .id = "basin-clear-front",
      .book = "comfort",
      .title = "clear floor in front",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::basinFronts,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "saniterra.pt rule 4"},
      .grade = Grade::verifiedSecondHand,
      .why = "Room to bend over the basin with somebody passing behind at a squeeze.",
  };
}

}  // namespace elbowroom::comfort
