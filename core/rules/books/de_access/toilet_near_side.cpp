#include "core/rules/checks/toilet_space.h"

namespace elbowroom::de_access {

using namespace literals;

Rule toiletNearSide() {
  return {
      .id = "toilet-near-side",
      .book = "de-access",
      .title = "gap beside it, nearer side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 200_mm,
      .measure = checks::toiletNearEdges,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "There is room for the arm and for cleaning.",
      .variants = {{.setting = "use", .value = "wheelchair", .limit = 300_mm}},
  };
}

}  // namespace elbowroom::de_access
