#include "core/rules/checks/electrical.h"

namespace elbowroom::us_electrical {

Rule lightSwitched() {
  return {
      .id = "light-switched",
      .book = "us-electrical",
      .title = "wall switch of a light",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::lightsSwitched,
      .source = {.document = "NEC",
                 .edition = "edition not named",
                 .section = "210.70(A)(1)",
                 .read_at = "from memory, not found in a text"},
      .grade = Grade::memory,
      .why = "Nobody should feel a way across a dark wet floor.",
      .met = "a light is switched at a wall",
      .missed = "no light is switched at a wall",
  };
}

}  // namespace elbowroom::us_electrical
