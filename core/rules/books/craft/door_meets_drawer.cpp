#include "core/rules/checks/doors.h"

namespace elbowroom::craft {

Rule doorMeetsDrawer() {
  return {
      .id = "door-meets-drawer",
      .book = "craft",
      .title = "room for its drawers at the open door",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::doorsAndPulls,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2 (no door hits a drawer)"},
      .grade = Grade::verifiedSecondHand,
      .why = "An open drawer and a door that opens meet sooner or later.",
      .limit_words = "how far drawers and doors come out",
      .mends = {Mend::slide, Mend::otherHand, Mend::otherSwing, Mend::otherAction},
  };
}

}  // namespace elbowroom::craft
