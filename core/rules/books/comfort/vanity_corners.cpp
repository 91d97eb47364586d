#include "core/rules/checks/vanities.h"

namespace elbowroom::comfort {

Rule vanityCorners() {
  return {
      .id = "vanity-corners",
      .book = "comfort",
      .title = "shape of the counter's corners",
      .level = Level::advised,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::counterCorners,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 8",
                 .read_at = "design-standards booklet page 49: clipped or rounded"},
      .grade = Grade::verifiedSecondHand,
      .why = "A sharp corner at hip height hurts in a narrow room.",
      .mends = {Mend::state},
      .met = "its corners are rounded or clipped",
      .missed = "its corners are sharp",
  };
}

}  // namespace elbowroom::comfort
