#include "core/rules/checks/drainage.h"

namespace elbowroom::us_uniform {

Rule pipesFrost() {
  return {
      .id = "pipes-frost",
      .book = "us-uniform",
      .title = "pipes in it",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::pipesInExteriorWalls,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "312.6",
                 .read_at = "caphcc.org, IAPMO text"},
      .grade = Grade::verified,
      .why = "A pipe that freezes bursts, and the wall floods when it thaws.",
  };
}

}  // namespace elbowroom::us_uniform
