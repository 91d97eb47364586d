#include "core/rules/checks/sides.h"

namespace elbowroom::us_residential {

using namespace literals;

// Advised, not required: the figure was not seen and P2705.1(5) governs any basin narrower than 22 in. Only
// basins that stand free of a cabinet; a vanity may stand against the wall.
Rule basinEdgeSide() {
  return {
      .id = "basin-edge-side",
      .book = "us-residential",
      .title = "edge to the wall, bath or basin beside it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 4_in,
      .measure = checks::basinEdges,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "Figure R307.1",
                 .read_at = "town summary at tomedwardsguitar.com; howtodotask.com; the figure itself not "
                            "seen"},
      .grade = Grade::partial,
      .why = "A hand with a cloth gets into the gap, and elbows stay off the wall.",
  };
}

}  // namespace elbowroom::us_residential
