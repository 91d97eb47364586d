#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

Rule doorUnlocks() {
  return {
      .id = "door-unlocks",
      .book = "de-access",
      .title = "unlocks from outside",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsUnlock,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "nullbarriere.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Help gets in when somebody cannot open the door.",
  };
}

}  // namespace elbowroom::de_access
