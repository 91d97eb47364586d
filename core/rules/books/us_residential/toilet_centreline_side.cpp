#include "core/rules/checks/sides.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "us-residential",
      .title = "centreline to the nearest side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::toiletSides,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::verifiedSecondHand,
      .why = "Less than this and elbows and knees meet the wall or the cabinet.",
  };
}

}  // namespace elbowroom::us_residential
