#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

using namespace literals;

Rule studNotch() {
  return {
      .id = "stud-notch",
      .book = "us-residential",
      .title = "notch in its studs",
      .level = Level::required,
      .compare = Compare::atMost,
      .limit = 1.375_in,
      .measure = checks::studNotches,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R602.6",
                 .read_at = "hinarratives.com, quoted"},
      .grade = Grade::verifiedSecondHand,
      .why = "Studs that are cut too deep no longer carry what stands on them.",
      .limit_words = "a quarter of the stud, 40 per cent where the wall does not bear",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::us_residential
