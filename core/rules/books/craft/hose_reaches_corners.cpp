#include "core/rules/checks/at_water.h"

namespace elbowroom::craft {

Rule hoseReachesCorners() {
  return {
      .id = "hose-reaches-corners",
      .book = "craft",
      .title = "hose to the farthest corner",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = Length{},
      .measure = checks::hosesReachCorners,
      .source = {.document = "Geometry of a hose",
                 .edition = "",
                 .section = "",
                 .read_at = "straight, and round the corners of walls, to the height of a "
                            "seat (17 in, planning guideline 12)"},
      .grade = Grade::derived,
      .why = "The hand spray has to come to whoever sits in the farthest corner.",
      .limit_words = "the way to the farthest corner at the height of a seat",
  };
}

}  // namespace elbowroom::craft
