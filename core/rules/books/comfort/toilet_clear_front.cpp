#include "core/rules/checks/fronts.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletClearFront() {
  return {
      .id = "toilet-clear-front",
      .book = "comfort",
      .title = "clear floor in front",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::toiletFronts,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "saniterra.pt rule 4"},
      .grade = Grade::verifiedSecondHand,
      .why = "Enough floor to turn, sit down and clean without touching what is opposite.",
  };
}

}  // namespace elbowroom::comfort
