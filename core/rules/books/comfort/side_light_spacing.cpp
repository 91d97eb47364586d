#include "core/rules/checks/lights.h"

namespace elbowroom::comfort {

using namespace literals;

Rule sideLightSpacing() {
  return {
      .id = "side-light-spacing",
      .book = "comfort",
      .title = "distance between side lights",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 28_in,
      .limit_high = 60_in,
      .measure = checks::sideLightSpacings,
      .source = {.document = "Trade articles on side lights",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com on lighting for mirrors and lookingforlights.com: at least 28 "
                            "and at most 60 in apart"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too near they dazzle, too far they leave the face dark.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
