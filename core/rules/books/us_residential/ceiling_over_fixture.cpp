#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

// Earlier editions ask for it over the fixture and over the floor before it (ceiling-before-fixture); from
// 2009 on the ceiling above a fixture has no figure.
Rule ceilingOverFixture() {
  return {
      .id = "ceiling-over-fixture",
      .book = "us-residential",
      .title = "ceiling over it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 80_in,
      .measure = checks::ceilingsOverFixtures,
      .source = {.document = "IRC",
                 .edition = "before 2009",
                 .section = "R305.1",
                 .read_at = "nachi.org f18/69727 and inspectionnews.net t-23080, both quote it"},
      .grade = Grade::verifiedSecondHand,
      .why = "One stands up from a toilet, in a bath and over a basin.",
      .variants = {{.setting = "edition", .value = "2021", .off = true},
                   {.setting = "edition", .value = "2018", .off = true},
                   {.setting = "edition", .value = "2009", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
