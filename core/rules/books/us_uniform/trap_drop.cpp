#include "core/rules/checks/drainage.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule trapDrop() {
  return {
      .id = "trap-drop",
      .book = "us-uniform",
      .title = "trap below the outlet",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 24_in,
      .measure = checks::trapDrops,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "1001",
                 .read_at = "greenyplace.com; eofficial.org uniform codes spotlight of 7 March 2024 for "
                            "the tailpiece (910.5, publisher)"},
      .grade = Grade::verifiedSecondHand,
      .why = "Water that falls further rushes through and empties the trap.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
