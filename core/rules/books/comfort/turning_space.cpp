#include "core/rules/checks/room.h"

namespace elbowroom::comfort {

using namespace literals;

// Guidance for a home where a person with a wheelchair is named.
Rule turningSpace() {
  return {
      .id = "turning-space",
      .book = "comfort",
      .title = "turning circle",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::turningSpaceForChair,
      .source = {.document = "2010 ADA Standards",
                 .edition = "",
                 .section = "304.3.1 or 304.3.2",
                 .read_at = "ada.gov text of the standards"},
      .grade = Grade::verified,
      .why = "Somebody in this plan uses a wheelchair and will want to turn round.",
  };
}

}  // namespace elbowroom::comfort
