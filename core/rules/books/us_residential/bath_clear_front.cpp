#include "core/rules/checks/fronts.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule bathClearFront() {
  return {
      .id = "bath-clear-front",
      .book = "us-residential",
      .title = "clear floor along the open side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 21_in,
      .measure = checks::bathFronts,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "Figure R307.1",
                 .read_at = "howtolookatahouse.com 2022/3; saniterra.pt rule 4"},
      .grade = Grade::verifiedSecondHand,
      .why = "One steps over the rim here, often with wet feet.",
  };
}

}  // namespace elbowroom::us_residential
