#include "core/rules/checks/pockets.h"

namespace elbowroom::craft {

using namespace literals;

Rule pocketWallThickness() {
  return {
      .id = "pocket-wall-thickness",
      .book = "craft",
      .title = "thickness of the wall for its pocket",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = 4.5_in,
      .measure = checks::pocketWallThicknesses,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on the space a pocket door needs: 1 3/8 in of leaf in 4 1/2 in "
                            "of wall, 1 3/4 in wants 2 by 6 studs"},
      .grade = Grade::verifiedSecondHand,
      .why = "The leaf needs air on both faces within the wall.",
      .limit_words = "4 1/2 in, for a leaf of 1 3/4 in 6 1/2 in",
      .mends = {Mend::narrower, Mend::state},
  };
}

}  // namespace elbowroom::craft
