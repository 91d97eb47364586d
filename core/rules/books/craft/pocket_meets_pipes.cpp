#include "core/rules/checks/doors.h"

namespace elbowroom::craft {

Rule pocketMeetsPipes() {
  return {
      .id = "pocket-meets-pipes",
      .book = "craft",
      .title = "pocket and pipes",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pocketPipes,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "upgradedhome.com on pocket doors in walls; hotelsabruzzo.com on electrical"},
      .grade = Grade::verifiedSecondHand,
      .why = "Pipes, wires and ducts cannot run where the leaf parks.",
  };
}

}  // namespace elbowroom::craft
