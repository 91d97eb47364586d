#include "core/rules/checks/room.h"

namespace elbowroom::us_residential {

using namespace literals;

// Of the level part; under a slope ceiling-over-shower and ceiling-high-half measure. The edition of 2009
// asks for it over the floor before each fixture instead (ceiling-before-fixture).
Rule ceilingHeight() {
  return {
      .id = "ceiling-height",
      .book = "us-residential",
      .title = "ceiling height",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 80_in,
      .measure = checks::ceilingHeight,
      .source = {.document = "IRC",
                 .edition = "2015 and later",
                 .section = "R305.1",
                 .read_at = "thebuildingcodeforum.com post 198504 (text of a state code based on it)"},
      .grade = Grade::verifiedSecondHand,
      .why = "A tall person must be able to stand upright everywhere that matters.",
      .variants = {{.setting = "edition", .value = "2009", .off = true},
                   {.setting = "edition", .value = "2006", .off = true}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
