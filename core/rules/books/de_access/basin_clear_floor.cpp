#include "core/rules/checks/clear_floor.h"

namespace elbowroom::de_access {

using namespace literals;

Rule basinClearFloor() {
  return {
      .id = "basin-clear-floor",
      .book = "de-access",
      .title = "movement area before it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1200_mm,
      .measure = checks::basinClearFloors,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "frelu.de and pi-home.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "One stands or sits at the basin and turns in this square.",
      .limit_words = "a square of this side",
      .variants = {{.setting = "use", .value = "wheelchair", .limit = 1500_mm}},
  };
}

}  // namespace elbowroom::de_access
