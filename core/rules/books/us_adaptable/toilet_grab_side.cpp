#include "core/rules/checks/toilet_space.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule toiletGrabSide() {
  return {
      .id = "toilet-grab-side",
      .book = "us-adaptable",
      .title = "centreline to the side for a bar",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::toiletGrabSides,
      .source = {.document = "Fair Housing Accessibility Guidelines",
                 .edition = "1991",
                 .section = "7(2)(b)(iv)",
                 .read_at = "corada.com, guidelines 7(2)(b)(iv)"},
      .grade = Grade::verified,
      .why = "A bar can be put up later where a hand finds it.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
