#include "core/rules/checks/curbless.h"

namespace elbowroom::comfort {

using namespace literals;

Rule showerOpenSide() {
  return {
      .id = "shower-open-side",
      .book = "comfort",
      .title = "head to the open side",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 60_in,
      .measure = checks::headsFromOpenSide,
      .source = {.document = "Trade articles on showers without a door",
                 .edition = "",
                 .section = "",
                 .read_at = "engineerfix.com on walk-in showers: 60 to 72 in from the head to the opening"},
      .grade = Grade::verifiedSecondHand,
      .why = "Without a door the spray stays in only where it falls short of the opening.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 72_in}},
  };
}

}  // namespace elbowroom::comfort
