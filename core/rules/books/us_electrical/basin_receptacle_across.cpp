#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule basinReceptacleAcross() {
  return {
      .id = "basin-receptacle-across",
      .book = "us-electrical",
      .title = "receptacle across a basin",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::basinReceptaclesAcross,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.52(D)",
                 .read_at = "ecmweb.com, code questions 81; disputed in a thread of thebuildingcodeforum.com "
                            "on the place of the receptacle"},
      .grade = Grade::verifiedSecondHand,
      .why = "A cord that lies across another basin ends up in its water.",
      .met = "one need not reach across another basin",
      .missed = "one has to reach across another basin",
  };
}

}  // namespace elbowroom::us_electrical
