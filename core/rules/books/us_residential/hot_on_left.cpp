#include "core/rules/checks/stated.h"

namespace elbowroom::us_residential {

Rule hotOnLeft() {
  return {
      .id = "hot-on-left",
      .book = "us-residential",
      .title = "hot water",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::hotOnTheLeft,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2722.2",
                 .read_at = "howtolookatahouse.com 2022/3"},
      .grade = Grade::verifiedSecondHand,
      .why = "Everybody, and a child most of all, reaches for cold water on the right.",
      .mends = {Mend::state},
      .met = "hot is on the left",
      .missed = "hot is not on the left",
  };
}

}  // namespace elbowroom::us_residential
