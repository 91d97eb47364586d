#include "core/rules/checks/drainage.h"

namespace elbowroom::us_residential {

Rule joistNotchPlace() {
  return {
      .id = "joist-notch-place",
      .book = "us-residential",
      .title = "place of the notch in the joist",
      .level = Level::required,
      .compare = Compare::isTrue,
      .limit = true,
      .measure = checks::joistNotchPlaces,
      .source = {.document = "IRC",
                 .edition = "edition not named",
                 .section = "R502.8.1",
                 .read_at = "hinarratives.com (R802.7.1, the same text, quoted); nationshomeinspections.com"},
      .grade = Grade::verifiedSecondHand,
      .why = "In the middle of its span a joist bends most.",
      .mends = {Mend::state},
      .met = "its notch is not in the middle third of the span",
      .missed = "a joist is notched in the middle third of its span",
  };
}

}  // namespace elbowroom::us_residential
