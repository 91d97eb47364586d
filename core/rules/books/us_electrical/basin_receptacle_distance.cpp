#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule basinReceptacleDistance() {
  return {
      .id = "basin-receptacle-distance",
      .book = "us-electrical",
      .title = "distance from basin to receptacle",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 36_in,
      .measure = checks::basinReceptacles,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.52(D)",
                 .read_at = "ecmweb.com, code quiz on bathroom receptacle outlets; forum.nachi.org 157926"},
      .grade = Grade::verifiedSecondHand,
      .why = "A cord that crosses the room to a dryer meets water and feet.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::us_electrical
