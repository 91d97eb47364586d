#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule trapOffset() {
  return {
      .id = "trap-offset",
      .book = "us-residential",
      .title = "trap beside the outlet",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 30_in,
      .measure = checks::trapOffsets,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "P3201.6",
                 .read_at = "tonyajoy.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "The pipe before the trap is never flushed and begins to smell.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
