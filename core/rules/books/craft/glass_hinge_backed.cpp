#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

Rule glassHingeBacked() {
  return {
      .id = "glass-hinge-backed",
      .book = "craft",
      .title = "wood behind its glass hinges",
      .level = Level::craft,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::glassHingesBacked,
      .source = {.document = "Glazier's page on frameless details",
                 .edition = "",
                 .section = "",
                 .read_at = "dmgglass.com, frameless details: solid wood behind side hinges, two studs laid flat"},
      .grade = Grade::verifiedSecondHand,
      .why = "A glass door of 3/8 in weighs about 70 pounds, and all of it hangs on the screws of its hinges.",
      .mends = {Mend::state},
      .met = "solid wood is in the wall where its glass hangs",
      .missed = "no solid wood is in the wall where its glass hangs",
  };
}

}  // namespace elbowroom::craft
