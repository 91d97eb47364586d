#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerGlassHeight() {
  return {
      .id = "shower-glass-height",
      .book = "comfort",
      .title = "height of its glass",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 72_in,
      .measure = checks::glassHeights,
      .source = {.document = "Trade articles on shower glass",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on the height of shower glass"},
      .grade = Grade::verifiedSecondHand,
      .why = "Over lower glass the spray goes into the room.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
