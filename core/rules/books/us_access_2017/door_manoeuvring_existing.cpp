#include "core/rules/checks/manoeuvring.h"

namespace elbowroom::us_access_2017 {

using namespace literals;

Rule doorManoeuvringExisting() {
  return {
      .id = "door-manoeuvring-existing",
      .book = "us-access-2017",
      .title = "floor at the door inside",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::doorManoeuvring,
      .source = {.document = "ICC A117.1",
                 .edition = "2017",
                 .section = "404.2.3.2",
                 .read_at = "extract of the 2017 standard made by others (footnote for existing "
                            "buildings); the rest as in the 2010 federal standards"},
      .grade = Grade::partial,
      .why = "Somebody in a wheelchair can reach the handle, open the door and go through it.",
      .limit_words = "48 to 60 in deep and wider than the opening by what the table asks for beside latch "
                     "or hinge",
      .sizes = {48_in},
      .variants = {{.setting = "building", .value = "new", .off = true}},
  };
}

}  // namespace elbowroom::us_access_2017
