#include "core/rules/checks/vanities.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinWallPerUser() {
  return {
      .id = "basin-wall-per-user",
      .book = "comfort",
      .title = "wall for each user",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::wallPerBasin,
      .source = {.document = "Trade article on double vanities",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com, when a double vanity just won't fit: 36 in of wall for each "
                            "user"},
      .grade = Grade::verifiedSecondHand,
      .why = "Washing takes elbow room on both sides of every user.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
