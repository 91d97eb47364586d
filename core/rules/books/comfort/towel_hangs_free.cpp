#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule towelHangsFree() {
  return {
      .id = "towel-hangs-free",
      .book = "comfort",
      .title = "free height under it",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 24_in,
      .measure = checks::towelFalls,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "web copy of its planning textbook, storage: a bath towel hangs 22 to 24 in below the bar, a "
                            "bath sheet 36 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "A towel that touches what is below it does not dry.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 36_in}},
      .mends = {Mend::raise},
  };
}

}  // namespace elbowroom::comfort
