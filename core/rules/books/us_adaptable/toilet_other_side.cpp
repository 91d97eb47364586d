#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletOtherSide() {
  return {
      .id = "toilet-other-side",
      .book = "us-adaptable",
      .title = "centreline to the other side",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::toiletOtherSides,
      .source = {.document = "Fair Housing Accessibility Guidelines",
                 .edition = "1991",
                 .section = "7(2)(b)(iv)",
                 .read_at = "corada.com, guidelines 7(2)(b)(iv)"},
      .grade = Grade::verified,
      .why = "There is room for the arm on the side without a bar too.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
