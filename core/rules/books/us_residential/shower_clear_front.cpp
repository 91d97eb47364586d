#include "core/rules/checks/fronts.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerClearFront() {
  return {
      .id = "shower-clear-front",
      .book = "us-residential",
      .title = "clear floor in front of the entry",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::showerFronts,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "Figure R307.1",
                 .read_at = "howtolookatahouse.com 2022/3; saniterra.pt rule 4"},
      .grade = Grade::verifiedSecondHand,
      .why = "Room to step out and dry off without meeting a wall.",
  };
}

}  // namespace elbowroom::us_residential
