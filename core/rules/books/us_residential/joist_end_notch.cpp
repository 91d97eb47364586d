#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule joistEndNotch() {
  return {
      .id = "joist-end-notch",
      .book = "us-residential",
      .title = "notch at the joist's end",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 2.3125_in,
      .measure = checks::joistEndNotches,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.1",
                 .read_at = "open-exam-prep.com on floor construction; nationshomeinspections.com on "
                            "notches"},
      .grade = Grade::verifiedSecondHand,
      .why = "At its bearing a joist that is cut deeper splits along the grain.",
      .limit_words = "a quarter of the depth of the joist",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
