#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

using namespace literals;

Rule showerThreshold() {
  return {
      .id = "shower-threshold",
      .book = "de-access",
      .title = "step",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 20_mm,
      .measure = checks::showerCurbs,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "shk-at-work.de and nullbarriere.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Wheels and tired feet get over it.",
  };
}

}  // namespace elbowroom::de_access
