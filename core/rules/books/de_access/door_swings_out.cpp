#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

Rule doorSwingsOut() {
  return {
      .id = "door-swings-out",
      .book = "de-access",
      .title = "door opens outward",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsSwingOut,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "nullbarriere.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who falls against the door can still be reached.",
  };
}

}  // namespace elbowroom::de_access
