#include "core/rules/checks/shower_doors.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerDoorWidth() {
  return {
      .id = "shower-door-width",
      .book = "comfort",
      .title = "width of the glass door",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 22_in,
      .limit_high = 36_in,
      .measure = checks::showerDoorWidths,
      .source = {.document = "Trade articles on shower glass",
                 .edition = "",
                 .section = "",
                 .read_at = "askingfact.com on the minimum shower door width"},
      .grade = Grade::verifiedSecondHand,
      .why = "Narrower is hard to walk through, wider is too heavy for its hinges.",
      .mends = {Mend::narrower, Mend::wider},
  };
}

}  // namespace elbowroom::comfort
