#include "core/rules/checks/toilet_space.h"

namespace elbowroom::de_access {

using namespace literals;

Rule toiletFarSide() {
  return {
      .id = "toilet-far-side",
      .book = "de-access",
      .title = "floor beside it, roomier side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 900_mm,
      .measure = checks::toiletFarEdges,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de and frelu.de and pi-home.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair stands beside the seat and one moves over.",
      .limit_words = "900 mm wide and 700 mm deep",
      .sizes = {700_mm},
      .variants = {{.setting = "use", .value = "plain", .off = true}},
  };
}

}  // namespace elbowroom::de_access
