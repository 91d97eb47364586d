#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

using namespace literals;

Rule receptacleGfciNearWater() {
  return {
      .id = "receptacle-gfci-near-water",
      .book = "us-electrical",
      .title = "earth fault protection (GFCI)",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::receptaclesGfciNearWater,
      .source = {.document = "NEC",
                 .edition = "2014 and later",
                 .section = "210.8(A)(9)",
                 .read_at = "electricallicenserenewal.com section 16; captaincode2014.leviton.com node 72"},
      .grade = Grade::verifiedSecondHand,
      .why = "Somebody who sits in the bath may reach what is plugged in there.",
      .sizes = {72_in},
      .variants = {{.setting = "edition", .value = "2011", .off = true},
                   {.setting = "edition", .value = "2008", .off = true}},
      .mends = {Mend::state},
      .met = "is protected by a GFCI near water",
      .missed = "is not protected by a GFCI near water",
  };
}

}  // namespace elbowroom::us_electrical
