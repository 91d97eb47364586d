#include "core/rules/checks/manoeuvring.h"

namespace elbowroom::us_access {

using namespace literals;

// Tables 404.2.4.1 and 404.2.4.2, on the room's side of the wall only.
Rule doorManoeuvring() {
  return {
      .id = "door-manoeuvring",
      .book = "us-access",
      .title = "floor at the door inside",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 48_in,
      .measure = checks::doorManoeuvring,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "404.2.4",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody in a wheelchair can reach the handle, open the door and go through it.",
      .limit_words = "48 to 60 in deep and wider than the opening by what the table asks for beside latch "
                     "or hinge",
      .sizes = {48_in},
  };
}

}  // namespace elbowroom::us_access
