#include "core/rules/checks/reach.h"

namespace elbowroom::comfort {

using namespace literals;

Rule paperHolderAhead() {
  return {
      .id = "paper-holder-ahead",
      .book = "comfort",
      .title = "ahead of the bowl",
      .level = Level::advised,
      .compare = Compare::between,
      .limit = 8_in,
      .limit_high = 12_in,
      .measure = checks::paperHoldersAhead,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 23",
                 .read_at = "design-standards booklet pages 66 and 67; jfjm100.com on the toilet "
                            "compartment: 8 to 12 in"},
      .grade = Grade::verifiedSecondHand,
      .why = "Behind the knees one has to twist for it.",
      .mends = {Mend::slide},
  };
}

}  // namespace elbowroom::comfort
