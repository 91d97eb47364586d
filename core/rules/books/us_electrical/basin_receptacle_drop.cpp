#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule basinReceptacleDrop() {
  return {
      .id = "basin-receptacle-drop",
      .book = "us-electrical",
      .title = "drop below the counter",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = checks::kBasinDrop,
      .measure = checks::basinReceptacleDrops,
      .source = {.document = "NEC",
                 .edition = "about 2011 and later, the year from memory",
                 .section = "210.52(D)",
                 .read_at = "forum.nachi.org 157926 and forums.mikeholt.com 113665; 138381 for its history"},
      .grade = Grade::verifiedSecondHand,
      .why = "A cord that hangs down from a low receptacle is pulled along with what stands on the counter.",
      .variants = {{.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::raise},
  };
}

}  // namespace elbowroom::us_electrical
