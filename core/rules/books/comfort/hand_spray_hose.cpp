#include "core/rules/checks/wall_items.h"

namespace elbowroom::comfort {

using namespace literals;

Rule handSprayHose() {
  return {
      .id = "hand-spray-hose",
      .book = "comfort",
      .title = "length of the hose",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 59_in,
      .measure = checks::hoses,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 10",
                 .read_at = "design standards booklet page 52, which quotes A117.1 608.6"},
      .grade = Grade::verifiedSecondHand,
      .why = "A short hose does not reach somebody seated, nor the corners to be rinsed.",
  };
}

}  // namespace elbowroom::comfort
