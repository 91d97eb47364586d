#include "core/rules/checks/clear_floor.h"

namespace elbowroom::au_access {

using namespace literals;

Rule toiletClearFront() {
  return {
      .id = "toilet-clear-front",
      .book = "au-access",
      .title = "floor before it, up to the door's swing",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1200_mm,
      .measure = checks::toiletFrontStrips,
      .source = {.document = "Livable Housing Design Standard",
                 .edition = "",
                 .section = "",
                 .read_at = "hia.com.au and kbdi.org.au; the width of 900 mm from memory"},
      .grade = Grade::verifiedSecondHand,
      .why = "One turns, sits down and closes the door without stepping round it.",
      .limit_words = "900 mm wide and 1200 mm deep",
      .sizes = {450_mm, 450_mm, 1_mm},
      .variants = {{.setting = "text", .value = "as1428", .off = true}},
  };
}

}  // namespace elbowroom::au_access
