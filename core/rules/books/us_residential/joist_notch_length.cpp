#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule joistNotchLength() {
  return {
      .id = "joist-notch-length",
      .book = "us-residential",
      .title = "length of the notch in the joist",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 3_in,
      .measure = checks::joistNotchLengths,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.1",
                 .read_at = "hinarratives.com (R802.7.1, the same text, quoted); "
                            "nationshomeinspections.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A long notch is a thinner joist, as when joists are cut down for a curbless shower.",
      .limit_words = "a third of the depth of the joist",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
