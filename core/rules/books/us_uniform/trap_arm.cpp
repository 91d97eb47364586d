#include "core/rules/checks/drainage.h"

namespace elbowroom::us_uniform {

using namespace literals;

// Along the pipe, from the trap weir to the vent fitting.
Rule trapArm() {
  return {
      .id = "trap-arm",
      .book = "us-uniform",
      .title = "pipe from the trap to the vent",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 30_in,
      .measure = checks::trapArms,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "Table 1002.2",
                 .read_at = "estatepass page on the California plumbing code; greenyplace.com for 4 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "Too long, and the water that leaves sucks the trap empty and lets sewer gas in.",
      .limit_words = "by the size of the drain",
      .sizes = {1.25_in, 30_in, 1.5_in, 42_in, 2_in, 60_in, 3_in, 72_in, 4_in, 120_in},
      .variants =
          {{.setting = "edition",
            .value = "earlier",
            .source =
                Source{
                    .document = "UPC",
                    .edition = "older editions",
                    .section = "Table 10-1",
                    .read_at = "estatepass page on the California plumbing code; greenyplace.com for 4 in"}}},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
