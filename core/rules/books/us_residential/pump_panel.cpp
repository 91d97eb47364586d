#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule pumpPanel() {
  return {
      .id = "pump-panel",
      .book = "us-residential",
      .title = "access panel of the pump",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 12_in,
      .measure = checks::pumpPanels,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2720.1",
                 .read_at = "inspectorsjournal.com 5356 and ths.gardenweb.com 2271377; the figure from "
                            "memory, the maker decides"},
      .grade = Grade::memory,
      .why = "A pump that cannot be reached cannot be mended.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
