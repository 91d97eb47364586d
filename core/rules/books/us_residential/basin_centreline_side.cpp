#include "core/rules/checks/sides.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule basinCentrelineSide() {
  return {
      .id = "basin-centreline-side",
      .book = "us-residential",
      .title = "centreline to the nearest side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::basinSides,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::verifiedSecondHand,
      .why = "Elbows need this room when washing hands or face.",
  };
}

}  // namespace elbowroom::us_residential
