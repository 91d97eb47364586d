#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule receptacleNotOverWater() {
  return {
      .id = "receptacle-not-over-water",
      .book = "us-electrical",
      .title = "receptacle in or over water",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesNotOverWater,
      .source = {.document = "NEC",
                 .edition = "2017 and earlier",
                 .section = "406.9(C)",
                 .read_at = "electricallicenserenewal.com section 1494"},
      .grade = Grade::verifiedSecondHand,
      .why = "A cord that hangs over the water falls into it.",
      .variants = {{.setting = "edition", .value = "2023", .off = true},
                   {.setting = "edition", .value = "2020", .off = true},
                   {.setting = "edition",
                    .value = "2008",
                    .source = Source{.document = "NEC",
                                     .edition = "2008 and earlier",
                                     .section = "406.8(C)",
                                     .read_at = "electricallicenserenewal.com section 1494"}}},
      .met = "is not in or over a bath or shower",
      .missed = "is in or over a bath or shower",
  };
}

}  // namespace elbowroom::us_electrical
