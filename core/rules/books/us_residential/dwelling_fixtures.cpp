#include "core/rules/checks/stated_figures.h"

namespace elbowroom::us_residential {

Rule dwellingFixtures() {
  return {
      .id = "dwelling-fixtures",
      .book = "us-residential",
      .title = "room",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::neededFixtures,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R306.1",
                 .read_at = "howtolookatahouse.com 2022/3"},
      .grade = Grade::verifiedSecondHand,
      .why = "Every dwelling needs a toilet, a basin and a bath or shower.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
