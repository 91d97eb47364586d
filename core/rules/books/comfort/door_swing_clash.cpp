#include "core/rules/checks/doors.h"

namespace elbowroom::comfort {

using namespace literals;

Rule doorSwingClash() {
  return {
      .id = "door-swing-clash",
      .book = "comfort",
      .title = "how far it opens",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 90_deg,
      .measure = checks::doorSwings,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2; sweep an inch wider than the leaf, jlconline.com "
                            "on clashing doors"},
      .grade = Grade::verifiedSecondHand,
      .why = "A door that strikes a fixture opens only part of the way and chips what it strikes.",
      .mends = {Mend::slide, Mend::otherHand, Mend::otherSwing, Mend::otherAction, Mend::narrower},
  };
}

}  // namespace elbowroom::comfort
