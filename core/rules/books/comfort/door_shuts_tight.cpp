#include "core/rules/checks/door_parts.h"

namespace elbowroom::comfort {

Rule doorShutsTight() {
  return {
      .id = "door-shuts-tight",
      .book = "comfort",
      .title = "how tight it shuts",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::doorsShutTight,
      .source = {.document = "Trade articles on sliding doors",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on how much a surface-sliding door should overlap its opening"},
      .grade = Grade::verifiedSecondHand,
      .why = "Sound, light and steam pass the gap behind a leaf that slides before the wall.",
      .mends = {Mend::otherAction},
  };
}

}  // namespace elbowroom::comfort
