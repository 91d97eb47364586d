#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

// This edition counts from the rim or threshold up and says nothing of walls and screens in between.
Rule receptacleOffWater2020() {
  return {
      .id = "receptacle-off-water-2020",
      .book = "us-electrical",
      .title = "distance to the water",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::receptaclesOffWaterAboveRim,
      .source = {.document = "NEC",
                 .edition = "2020",
                 .section = "406.9(C)",
                 .read_at = "captaincode2020.leviton.com node 251"},
      .grade = Grade::verified,
      .why = "Nobody in the bath or shower should be able to touch what is plugged in.",
      .sizes = {96_in},
      .variants = {{.setting = "edition", .value = "2023", .off = true},
                   {.setting = "edition", .value = "2017", .off = true},
                   {.setting = "edition", .value = "2011", .off = true},
                   {.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::us_electrical
