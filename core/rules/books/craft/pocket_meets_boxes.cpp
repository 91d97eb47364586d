#include "core/rules/checks/pockets.h"

namespace elbowroom::craft {

Rule pocketMeetsBoxes() {
  return {
      .id = "pocket-meets-boxes",
      .book = "craft",
      .title = "pocket and what is set in its wall",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pocketBoxes,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "upgradedhome.com on pocket doors; hotelsabruzzo.com on electrical (no pipes, "
                            "wires, boxes, ducts or studs in the pocket)"},
      .grade = Grade::verifiedSecondHand,
      .why = "A box, a pipe or a bolt stands where the leaf parks.",
      .mends = {Mend::slide, Mend::otherHand},
  };
}

}  // namespace elbowroom::craft
