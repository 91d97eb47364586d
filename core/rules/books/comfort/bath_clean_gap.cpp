#include "core/rules/checks/baths.h"

namespace elbowroom::comfort {

using namespace literals;

Rule bathCleanGap() {
  return {
      .id = "bath-clean-gap",
      .book = "comfort",
      .title = "gap to the wall",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 4_in,
      .measure = checks::bathWallGaps,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 4",
                 .read_at = "saniterra.pt page 4 (after guideline 4): at least 4 in, better 6 in, to "
                            "clean behind it"},
      .grade = Grade::verifiedSecondHand,
      .why = "What the hand cannot reach behind a bath is never cleaned.",
      .variants = {{.setting = "figures", .value = "ample", .limit = 6_in}},
      .mends = {Mend::slide, Mend::narrower},
  };
}

}  // namespace elbowroom::comfort
