#include "core/rules/checks/access_showers.h"

namespace elbowroom::de_access {

using namespace literals;

Rule showerSize() {
  return {
      .id = "shower-size",
      .book = "de-access",
      .title = "level area",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1200_mm,
      .measure = checks::showerShortSides,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "shk-at-work.de and nullbarriere.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair or a helper finds room under the water.",
      .limit_words = "a square of this side",
      .variants = {{.setting = "use", .value = "wheelchair", .limit = 1500_mm}},
  };
}

}  // namespace elbowroom::de_access
