#include "core/rules/checks/showers.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerSize() {
  return {
      .id = "shower-size",
      .book = "comfort",
      .title = "room for a disc within",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::showerDiscs,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 9",
                 .read_at = "on-line copy of the design standards booklet, page 49"},
      .grade = Grade::verifiedSecondHand,
      .why = "Room to turn and to bend without touching the walls.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
