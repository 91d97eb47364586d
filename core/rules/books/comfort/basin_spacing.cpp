#include "core/rules/checks/spacing.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinSpacing() {
  return {
      .id = "basin-spacing",
      .book = "comfort",
      .title = "room between basin centres",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::basinSpacing20,
      .source = {.document = "Bathroom planning guidelines of the US kitchen and bath trade association",
                 .edition = "2012 revision",
                 .section = "Guideline 6",
                 .read_at = "jlconline.com on double vanities (30 and 36); the guideline itself not seen"},
      .grade = Grade::derived,
      .why = "Two people can wash side by side without jostling.",
  };
}

}  // namespace elbowroom::comfort
