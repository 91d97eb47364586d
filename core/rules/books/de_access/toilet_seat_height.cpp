#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

using namespace literals;

Rule toiletSeatHeight() {
  return {
      .id = "toilet-seat-height",
      .book = "de-access",
      .title = "height of the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 460_mm,
      .limit_high = 480_mm,
      .measure = checks::toiletSeatHeights,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "A seat as high as the chair makes moving over possible.",
  };
}

}  // namespace elbowroom::de_access
