#include "core/rules/checks/doors.h"

namespace elbowroom::craft {

Rule drawerTravel() {
  return {
      .id = "drawer-travel",
      .book = "craft",
      .title = "floor for its drawers and doors",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::pullTravels,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "plain geometry"},
      .grade = Grade::commonPractice,
      .why = "A drawer that does not come out all the way is half a drawer.",
      .limit_words = "how far drawers and doors come out",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::craft
