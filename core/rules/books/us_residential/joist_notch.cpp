#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule joistNotch() {
  return {
      .id = "joist-notch",
      .book = "us-residential",
      .title = "notch in the joist",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 1.5_in,
      .measure = checks::joistNotches,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.1",
                 .read_at = "hinarratives.com (R802.7.1, the same text, quoted); "
                            "nationshomeinspections.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "A joist that is cut deeper sags or splits, and an engineer decides about anything but solid "
             "wood.",
      .limit_words = "a sixth of the depth of the joist",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
