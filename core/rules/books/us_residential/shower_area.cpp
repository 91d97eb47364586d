#include "core/rules/checks/showers.h"

namespace elbowroom::us_residential {

Rule showerArea() {
  return {
      .id = "shower-area",
      .book = "us-residential",
      .title = "inside area",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(900),
      .measure = checks::showerAreas,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "askcodeman.com t=488 (same text in IPC 417.4 quoted); howtolookatahouse.com "
                            "2018/6"},
      .grade = Grade::verifiedSecondHand,
      .why = "The least floor on which a person can wash standing up.",
      .mends = {Mend::wider},
  };
}

}  // namespace elbowroom::us_residential
