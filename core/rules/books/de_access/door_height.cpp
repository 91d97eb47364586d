#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

using namespace literals;

Rule doorHeight() {
  return {
      .id = "door-height",
      .book = "de-access",
      .title = "clear height",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 2050_mm,
      .measure = checks::doorHeights,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Tall people and lifting aids pass.",
  };
}

}  // namespace elbowroom::de_access
