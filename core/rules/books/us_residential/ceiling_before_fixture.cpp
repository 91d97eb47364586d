#include "core/rules/checks/headroom.h"

namespace elbowroom::us_residential {

using namespace literals;

// From 2015 the ceiling above a fixture must let it be used, without a figure.
Rule ceilingBeforeFixture() {
  return {
      .id = "ceiling-before-fixture",
      .book = "us-residential",
      .title = "ceiling over the floor in front",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 80_in,
      .measure = checks::ceilingsBeforeFixtures,
      .source = {.document = "IRC",
                 .edition = "2009",
                 .section = "R305.1 exception 2",
                 .read_at = "nachi.org f18/69727 and inspectionnews.net t-23080, both quote it"},
      .grade = Grade::verifiedSecondHand,
      .why = "One stands up in front of a toilet and leans over a basin.",
      .sizes = {21_in},
      .variants = {{.setting = "edition", .value = "2021", .off = true},
                   {.setting = "edition", .value = "2018", .off = true}},
  };
}

}  // namespace elbowroom::us_residential
