#include "core/rules/checks/stated.h"

namespace elbowroom::de_access {

using namespace literals;

Rule basinHeight() {
  return {
      .id = "basin-height",
      .book = "de-access",
      .title = "height of the rim",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 800_mm,
      .measure = checks::basinHeights,
      .source = {.document = "DIN 18040-2",
                 .edition = "",
                 .section = "",
                 .read_at = "aktion-barrierefreies-bad.de"},
      .grade = Grade::verifiedSecondHand,
      .why = "Sitting, one washes hands without water running down the sleeves.",
  };
}

}  // namespace elbowroom::de_access
