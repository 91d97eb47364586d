#include "core/rules/checks/hot_water.h"

namespace elbowroom::comfort {

Rule showerHotWait() {
  return {
      .id = "shower-hot-wait",
      .book = "comfort",
      .title = "wait for hot water",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = Amount::of(30),
      .measure = checks::hotWaterWaits,
      .source = {.document = "Trade article on waiting for hot water",
                 .edition = "",
                 .section = "",
                 .read_at = "pmmag.com article 87768: 60 s was good, 30 s is today; water in pipes by "
                            "IPC 2009 Table E202.1 as bsesc.energy.gov prints it"},
      .grade = Grade::verifiedSecondHand,
      .why = "So long a hand has to stay out of the spray, and the water runs away unused.",
      .unit = "s",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::comfort
