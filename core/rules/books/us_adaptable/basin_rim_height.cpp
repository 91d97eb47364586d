#include "core/rules/checks/stated.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule basinRimHeight() {
  return {
      .id = "basin-rim-height",
      .book = "us-adaptable",
      .title = "height of the rim",
      .level = Level::advised,
      .compare = Compare::atMost,
      .limit = 34_in,
      .measure = checks::basinHeights,
      .source = {.document = "Fair Housing Accessibility Guidelines",
                 .edition = "1991",
                 .section = "",
                 .read_at = "from memory; not found in a stored text"},
      .grade = Grade::memory,
      .why = "Sitting, one washes hands without water running down the sleeves.",
      .variants = {{.setting = "text", .value = "type-b", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
