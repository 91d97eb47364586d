#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule receptacleBelowRim() {
  return {
      .id = "receptacle-below-rim",
      .book = "us-electrical",
      .title = "distance to the water, below the rim",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::receptaclesOffWaterBelowRim,
      .source = {.document = "NEC",
                 .edition = "2020, as disputed",
                 .section = "406.9(C)",
                 .read_at = "forums.mikeholt.com 2565642; electricallicenserenewal.com section 1494"},
      .grade = Grade::verifiedSecondHand,
      .why = "The 2020 text leaves the space below the rim open and the next edition counts it in.",
      .sizes = {96_in},
      .variants = {{.setting = "edition", .value = "2023", .off = true},
                   {.setting = "edition", .value = "2017", .off = true},
                   {.setting = "edition", .value = "2011", .off = true},
                   {.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::us_electrical
