#include "core/rules/checks/manoeuvring.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule doorManoeuvring() {
  return {
      .id = "door-manoeuvring",
      .book = "us-access-2017",
      .title = "floor at the door inside",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 52_in,
      .measure = checks::doorManoeuvring,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "404.2.3.2",
                 .read_at = "the table of the 2010 federal standards; 52 in for a push from the front "
                            "from memory"},
      .grade = Grade::memory,
      .why = "Somebody in a wheelchair can reach the handle, open the door and go through it.",
      .limit_words = "48 to 60 in deep and wider than the opening by what the table asks for beside latch "
                     "or hinge",
      .sizes = {52_in},
      .variants = {{.setting = "building", .value = "existing", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
