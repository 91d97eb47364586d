#include "core/rules/checks/pockets.h"

namespace elbowroom::craft {

Rule pocketLoad() {
  return {
      .id = "pocket-load",
      .book = "craft",
      .title = "load on the wall of the pocket",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pocketLoads,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "upgradedhome.com on a pocket door in a load-bearing wall: a header over twice "
                            "the leaf and 1 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "Studs that carry load are cut away over the whole pocket, which is for an engineer to say.",
      .mends = {Mend::otherAction, Mend::slide, Mend::state},
  };
}

}  // namespace elbowroom::craft
