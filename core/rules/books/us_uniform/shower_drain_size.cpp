#include "core/rules/checks/drainage.h"

namespace elbowroom::us_uniform {

using namespace literals;

Rule showerDrainSize() {
  return {
      .id = "shower-drain-size",
      .book = "us-uniform",
      .title = "size of its drain",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 2_in,
      .measure = checks::drainSizes,
      .source = {.document = "UPC",
                 .edition = "edition not named",
                 .section = "Table 702.1",
                 .read_at = "terrylove.com 29678 and 334115"},
      .grade = Grade::verifiedSecondHand,
      .why = "The water must leave faster than the head brings it.",
      .sizes = {Length{}, Length{}, Length{}, Length{}, 2_in},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_uniform
