#include "core/rules/checks/spacing.h"

namespace elbowroom::us_residential {

using namespace literals;

// Any adjacent fixtures of the list (toilet, bidet, basin). Only those that face the same way are side by
// side.
Rule fixtureCentreToCentre() {
  return {
      .id = "fixture-centre-to-centre",
      .book = "us-residential",
      .title = "centre to centre with its neighbour",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::fixtureCentres,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::verifiedSecondHand,
      .why = "Two people, or one pair of elbows, need this between fixtures side by side.",
  };
}

}  // namespace elbowroom::us_residential
