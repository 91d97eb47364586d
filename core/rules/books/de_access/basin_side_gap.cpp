#include "core/rules/checks/access_room.h"

namespace elbowroom::de_access {

using namespace literals;

Rule basinSideGap() {
  return {
      .id = "basin-side-gap",
      .book = "de-access",
      .title = "gap beside it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 200_mm,
      .measure = checks::basinSideGaps,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Elbows and a cleaning hand find room.",
  };
}

}  // namespace elbowroom::de_access
