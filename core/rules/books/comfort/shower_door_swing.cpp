#include "core/rules/checks/shower_doors.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerDoorSwing() {
  return {
      .id = "shower-door-swing",
      .book = "comfort",
      .title = "how far its glass door opens",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 90_deg,
      .measure = checks::glassDoorSwings,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 2",
                 .read_at = "nkba.org guidelines page 2 (fixture doors)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Glass that strikes a fixture or a wall breaks.",
      .mends = {Mend::slide, Mend::otherHand, Mend::narrower},
  };
}

}  // namespace elbowroom::comfort
