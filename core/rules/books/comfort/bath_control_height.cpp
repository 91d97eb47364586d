#include "core/rules/checks/baths.h"

namespace elbowroom::comfort {

using namespace literals;

Rule bathControlHeight() {
  return {
      .id = "bath-control-height",
      .book = "comfort",
      .title = "height of its valve",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = Length{},
      .limit_high = 33_in,
      .measure = checks::bathControlHeights,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 10",
                 .read_at = "nkba.com guideline 10; design-standards booklet page 52: between the rim "
                            "and 33 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "One turns it from outside on the knees and from inside lying down.",
      .limit_words = "the rim to 33 in",
      .mends = {Mend::raise, Mend::lower},
  };
}

}  // namespace elbowroom::comfort
