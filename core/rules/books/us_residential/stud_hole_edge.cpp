#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule studHoleEdge() {
  return {
      .id = "stud-hole-edge",
      .book = "us-residential",
      .title = "wood beside the hole in the stud",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 0.625_in,
      .measure = checks::studHoleEdges,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R602.6",
                 .read_at = "hinarratives.com, quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too near the edge the wood splits, and a screw of the wallboard finds the pipe.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
