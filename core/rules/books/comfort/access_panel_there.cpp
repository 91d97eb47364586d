#include "core/rules/checks/stated_figures.h"

namespace elbowroom::comfort {

Rule accessPanelThere() {
  return {
      .id = "access-panel-there",
      .book = "comfort",
      .title = "access to the pipes",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::panelsThere,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 19",
                 .read_at = "guideline 19 at jfjm100.com, which names no size"},
      .grade = Grade::verifiedSecondHand,
      .why = "Valve, trap and pump fail one day behind the tile.",
      .mends = {Mend::state},
      .met = "has an access panel",
      .missed = "has no access panel",
  };
}

}  // namespace elbowroom::comfort
