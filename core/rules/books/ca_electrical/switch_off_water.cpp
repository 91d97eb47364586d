#include "core/rules/checks/ca_electrical.h"

namespace elbowroom::ca_electrical {

using namespace literals;

// 1 m, or 500 mm on a GFCI; glass between changes nothing.
Rule switchOffWater() {
  return {
      .id = "switch-off-water",
      .book = "ca-electrical",
      .title = "distance of the switch to the water",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1000_mm,
      .measure = checks::switchesFarFromWater,
      .source = {.document = "CSA C22.1",
                 .edition = "edition not named",
                 .section = "30-320(3)",
                 .read_at = "oncodes.ca (reprint of CSA C22.1), lighting equipment in damp locations or near "
                            "grounded metal"},
      .grade = Grade::verified,
      .why = "Nobody should work a switch from the bath or shower.",
      .sizes = {500_mm},
      .mends = {Mend::slide, Mend::state},
  };
}

}  // namespace elbowroom::ca_electrical
