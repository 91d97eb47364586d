#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerRollInLength() {
  return {
      .id = "shower-roll-in-length",
      .book = "comfort",
      .title = "length to roll in",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::curblessLengths,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 9",
                 .read_at = "design-standards booklet page 44: 36 to 42 by 60 in preferred"},
      .grade = Grade::verifiedSecondHand,
      .why = "A shorter one leaves the chair half in the room.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::comfort
