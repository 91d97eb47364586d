#include "core/rules/checks/spacing.h"

namespace elbowroom::us_residential {

using namespace literals;

// The plan does not say where the basins of a vanity are. Each must keep 15 in to the side and 30 in to the
// next, so a counter too short for any arrangement is short for certain.
Rule basinSpacing() {
  return {
      .id = "basin-spacing",
      .book = "us-residential",
      .title = "room between basin centres",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::basinSpacing15,
      .source = {.document = "IRC",
                 .edition = "2009 (unchanged through 2021 from memory)",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com, thread on clearance in front of toilets, item 5 "
                            "quoted in full"},
      .grade = Grade::derived,
      .why = "Two people can only use a double vanity together if the basins are far enough apart.",
  };
}

}  // namespace elbowroom::us_residential
