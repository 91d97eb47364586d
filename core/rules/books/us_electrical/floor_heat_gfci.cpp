#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule floorHeatGfci() {
  return {
      .id = "floor-heat-gfci",
      .book = "us-electrical",
      .title = "GFCI of the floor heating",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::floorHeatGfci,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "424.44(G)",
                 .read_at = "from memory, not found in a text"},
      .grade = Grade::memory,
      .why = "A cable that is damaged by a later screw lies under a wet floor.",
      .mends = {Mend::state},
      .met = "its floor heating is protected by a GFCI",
      .missed = "its floor heating is not protected by a GFCI",
  };
}

}  // namespace elbowroom::us_electrical
