#include "core/rules/checks/fronts.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule basinClearFront() {
  return {
      .id = "basin-clear-front",
      .book = "us-residential",
      .title = "clear floor in front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 21_in,
      .measure = checks::basinFronts,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::verifiedSecondHand,
      .why = "A person bends over a basin and needs floor to stand on.",
  };
}

}  // namespace elbowroom::us_residential
