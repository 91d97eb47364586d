#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

// Along the pipe, from the trap weir to the vent fitting.
Rule trapArm() {
  return {
      .id = "trap-arm",
      .book = "us-residential",
      .title = "pipe from the trap to the vent",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 60_in,
      .measure = checks::trapArms,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "Table P3105.1",
                 .read_at = "jlconline.com on locating plumbing vents"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too long, and the water that leaves sucks the trap empty and lets sewer gas in.",
      .limit_words = "by the size of the drain",
      .sizes = {1.25_in, 60_in, 1.5_in, 72_in, 2_in, 96_in, 3_in, 144_in, 4_in, 192_in},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
