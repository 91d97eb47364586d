#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

Rule lightSwitchEntry() {
  return {
      .id = "light-switch-entry",
      .book = "comfort",
      .title = "switch for a light at the entry",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::switchesAtEntry,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 25",
                 .read_at = "design-standards booklet page 69, quoting the code: at least one light with "
                            "a wall switch at the entrance"},
      .grade = Grade::verifiedSecondHand,
      .why = "Nobody should cross a dark wet floor to find the switch.",
      .mends = {Mend::state},
      .met = "a switch at the entry controls a light",
      .missed = "no switch at the entry controls a light",
  };
}

}  // namespace elbowroom::comfort
