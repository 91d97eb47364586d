#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

// For one head of at most 5.7 gpm (that figure from memory); 2 in is the usual choice.
Rule showerDrainSize() {
  return {
      .id = "shower-drain-size",
      .book = "us-residential",
      .title = "size of its drain",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 1.5_in,
      .measure = checks::drainSizes,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "Table P3201.7",
                 .read_at = "terrylove.com 29678 and 334115"},
      .grade = Grade::verifiedSecondHand,
      .why = "The water must leave faster than the head brings it.",
      .sizes = {Length{}, Length{}, Length{}, Length{}, 1.5_in},
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
