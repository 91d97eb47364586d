#include "core/rules/checks/sides.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule basinCentrelineSide() {
  return {
      .id = "basin-centreline-side",
      .book = "us-adaptable",
      .title = "centreline to the side",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 15_in,
      .measure = checks::basinSides,
      .source = {.document = "Fair Housing Accessibility Guidelines",
                 .edition = "1991",
                 .section = "",
                 .read_at = "from memory, the text was not found"},
      .grade = Grade::memory,
      .why = "A wheelchair stands alongside without scraping the wall.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
