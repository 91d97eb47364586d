#include "core/rules/checks/ca_electrical.h"

namespace elbowroom::ca_electrical {

using namespace literals;

// One receptacle within 1 m of any one wash basin is enough, however many there are.
Rule basinReceptacleDistance() {
  return {
      .id = "basin-receptacle-distance",
      .book = "ca-electrical",
      .title = "receptacle near a basin",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 1000_mm,
      .measure = checks::receptacleAtAnyBasin,
      .source = {.document = "CSA C22.1",
                 .edition = "2021",
                 .section = "26-720 f)",
                 .read_at = "oncodes.ca (reprint of CSA C22.1), general receptacles"},
      .grade = Grade::verified,
      .why = "A cord that crosses the room to a dryer meets water and feet.",
      .variants = {{.setting = "edition",
                    .value = "2015",
                    .source = Source{.document = "CSA C22.1",
                                     .edition = "2012 to 2015",
                                     .section = "26-710 f)",
                                     .read_at = "public copy of the older text, pastebin xGEzXBDu"}}},
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::ca_electrical
