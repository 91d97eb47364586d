#include "core/rules/checks/sides.h"

namespace elbowroom::comfort {

using namespace literals;

Rule toiletCentrelineSide() {
  return {
      .id = "toilet-centreline-side",
      .book = "comfort",
      .title = "centreline to the nearest side",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 18_in,
      .measure = checks::toiletSides,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 20",
                 .read_at = "tilingandheating.co.za/bathroom-makeovers (18 against 15); aarp.org bathroom "
                            "checklist also has 18"},
      .grade = Grade::verifiedSecondHand,
      .why = "Elbow room that feels comfortable rather than merely allowed.",
  };
}

}  // namespace elbowroom::comfort
