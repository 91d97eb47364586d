#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule basinReceptacleRise() {
  return {
      .id = "basin-receptacle-rise",
      .book = "us-electrical",
      .title = "rise above the counter",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 20_in,
      .measure = checks::basinReceptacleRises,
      .source =
          {.document = "Plan review of a Californian town",
           .edition = "",
           .section = "",
           .read_at =
               "a public plan-review comment that applies NEC 210.52(C), written for kitchens, to bathrooms"},
      .grade = Grade::partial,
      .why = "A plug at hand height above the counter is easy to see and to pull.",
      .variants = {{.setting = "counter", .value = "free", .off = true}},
      .mends = {Mend::lower},
  };
}

}  // namespace elbowroom::us_electrical
