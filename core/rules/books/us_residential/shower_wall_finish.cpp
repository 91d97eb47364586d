#include "core/rules/checks/wet.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerWallFinish() {
  return {
      .id = "shower-wall-finish",
      .book = "us-residential",
      .title = "waterproof wall finish above the floor",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 72_in,
      .measure = checks::wallFinishes,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R307.2",
                 .read_at = "askcodeman.com t=781, text of a state code based on it"},
      .grade = Grade::verifiedSecondHand,
      .why = "Spray that reaches bare board or paint rots the wall behind it.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
