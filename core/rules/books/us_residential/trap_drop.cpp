#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule trapDrop() {
  return {
      .id = "trap-drop",
      .book = "us-residential",
      .title = "trap below the outlet",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 24_in,
      .measure = checks::trapDrops,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P3201.6",
                 .read_at = "greenyplace.com; tonyajoy.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that falls further rushes through and empties the trap.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
