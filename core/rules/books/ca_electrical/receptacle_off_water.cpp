#include "core/rules/checks/ca_electrical.h"

namespace elbowroom::ca_electrical {

using namespace literals;

// 1 m where practicable, in no case less than 500 mm; level, without piercing a wall, partition or similar.
Rule receptacleOffWater() {
  return {
      .id = "receptacle-off-water",
      .book = "ca-electrical",
      .title = "distance to the water",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1000_mm,
      .measure = checks::receptaclesFarFromWater,
      .source = {.document = "CSA C22.1",
                 .edition = "2021",
                 .section = "26-720 f)",
                 .read_at = "oncodes.ca (reprint of CSA C22.1), general receptacles"},
      .grade = Grade::verified,
      .why = "Nobody in the bath or shower should be able to touch what is plugged in.",
      .sizes = {500_mm},
      .variants = {{.setting = "edition",
                    .value = "2015",
                    .source = Source{.document = "CSA C22.1",
                                     .edition = "2012 to 2015",
                                     .section = "26-710 f)",
                                     .read_at = "public copy of the older text, pastebin xGEzXBDu"}}},
      .mends = {Mend::slide, Mend::state},
  };
}

}  // namespace elbowroom::ca_electrical
