#include "core/rules/checks/stated.h"

namespace elbowroom::craft {

Rule doorUnlocksOutside() {
  return {
      .id = "door-unlocks-outside",
      .book = "craft",
      .title = "lock",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsUnlock,
      .source = {.document = "Common practice, no source",
                 .edition = "",
                 .section = "",
                 .read_at = "common practice; German guidance asks it of barrier-free rooms (nullbarriere)"},
      .grade = Grade::commonPractice,
      .why = "Whoever falls behind a locked door needs somebody who can come in.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::craft
