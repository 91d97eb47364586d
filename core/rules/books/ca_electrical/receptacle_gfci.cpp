#include "core/rules/checks/ca_electrical.h"

namespace elbowroom::ca_electrical {

using namespace literals;

// Within 1.5 m and not through a doorway with a door; everything in the plan is on this side of the doors.
Rule receptacleGfci() {
  return {
      .id = "receptacle-gfci",
      .book = "ca-electrical",
      .title = "earth fault protection (GFCI)",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesGfciAtWater,
      .source = {.document = "CSA C22.1",
                 .edition = "edition not named",
                 .section = "26-704",
                 .read_at = "oncodes.ca (reprint of CSA C22.1), appendix B note on rule 26-700; \"sink, tub "
                            "or shower\" from barrie-home-inspector.com"},
      .grade = Grade::partial,
      .why = "A wet hand and a faulty dryer are what a GFCI is for.",
      .sizes = {1500_mm},
      .mends = {Mend::state},
      .met = "is protected by a GFCI near water",
      .missed = "is not protected by a GFCI near water",
  };
}

}  // namespace elbowroom::ca_electrical
