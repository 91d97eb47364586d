#include "core/rules/checks/shower_up.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule showerAreaUp() {
  return {
      .id = "shower-area-up",
      .book = "us-residential",
      .title = "inside area, kept up to 70 in",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = Area::fromSquareInches(900),
      .measure = checks::showerAreasUp,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P2708.1",
                 .read_at = "homeownersnetwork, page on plumbing fixtures"},
      .grade = Grade::verifiedSecondHand,
      .why = "One washes standing up, so the room is needed at the height of the head.",
      .sizes = {70_in},
      .mends = {Mend::slide, Mend::wider},
  };
}

}  // namespace elbowroom::us_residential
