#include "core/rules/checks/grab_bars.h"

namespace elbowroom::de_access {

using namespace literals;

Rule supportBarHeight() {
  return {
      .id = "support-bar-height",
      .book = "de-access",
      .title = "top above the seat",
      .level = Level::required,
      .compare = Compare::between,
      .limit = 280_mm,
      .limit_high = 280_mm,
      .measure = checks::foldBarsAboveSeat,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Pushing up from it takes bent arms, not a shrug.",
  };
}

}  // namespace elbowroom::de_access
