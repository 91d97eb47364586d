#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

Rule pipesFrost() {
  return {
      .id = "pipes-frost",
      .book = "us-residential",
      .title = "pipes in it",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pipesInExteriorWalls,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2603.5",
                 .read_at = "thebuildingcodeforum.com 33198"},
      .grade = Grade::verifiedSecondHand,
      .why = "A pipe that freezes bursts, and the wall floods when it thaws.",
  };
}

}  // namespace elbowroom::us_residential
