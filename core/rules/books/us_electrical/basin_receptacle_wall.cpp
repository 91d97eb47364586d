#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule basinReceptacleWall() {
  return {
      .id = "basin-receptacle-wall",
      .book = "us-electrical",
      .title = "wall of its receptacle",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::basinReceptacleWalls,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.52(D)",
                 .read_at = "ecmweb.com, code quiz on bathroom receptacle outlets; forum.nachi.org 157926"},
      .grade = Grade::verifiedSecondHand,
      .why = "Whoever stands at the basin reaches the plug without turning round with a wet hand.",
      .met = "the receptacle is on a wall beside the basin",
      .missed = "the receptacle is on a wall away from the basin",
  };
}

}  // namespace elbowroom::us_electrical
