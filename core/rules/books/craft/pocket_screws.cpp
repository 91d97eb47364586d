#include "core/rules/checks/pockets.h"

namespace elbowroom::craft {

using namespace literals;

Rule pocketScrews() {
  return {
      .id = "pocket-screws",
      .book = "craft",
      .title = "screws into the pocket",
      .level = Level::craft,
      .compare = Compare::atMost,
      .limit = 1.125_in,
      .measure = checks::pocketScrews,
      .source = {.document = "Framing practice for pocket doors",
                 .edition = "",
                 .section = "",
                 .read_at = "renovation-headquarters.com on pocket doors: 1/2 in of board and 5/8 in of "
                            "split stud"},
      .grade = Grade::verifiedSecondHand,
      .why = "A longer screw stops or scratches the leaf.",
      .mends = {Mend::slide, Mend::state},
  };
}

}  // namespace elbowroom::craft
