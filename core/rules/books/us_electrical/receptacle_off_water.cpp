#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

// From the floor to 8 ft above the rim or threshold.
Rule receptacleOffWater() {
  return {
      .id = "receptacle-off-water",
      .book = "us-electrical",
      .title = "distance to the water",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::receptaclesOffWater,
      .source = {.document = "NEC",
                 .edition = "2023",
                 .section = "406.9(C)",
                 .read_at = "manual of a maker with a reprint of NFPA 70, 2023 edition, p. 73; the end of "
                            "exception 4 not read"},
      .grade = Grade::verified,
      .why = "Nobody in the bath or shower should be able to touch what is plugged in.",
      .sizes = {96_in},
      .variants = {{.setting = "edition", .value = "2020", .off = true},
                   {.setting = "edition", .value = "2017", .off = true},
                   {.setting = "edition", .value = "2011", .off = true},
                   {.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::us_electrical
