#include "core/rules/checks/clear_floor.h"

namespace elbowroom::us_adaptable {

using namespace literals;

Rule basinClearFloor() {
  return {
      .id = "basin-clear-floor",
      .book = "us-adaptable",
      .title = "clear floor along it",
      .level = Level::required,
      .compare = Compare::atLeast,
      .limit = 30_in,
      .measure = checks::basinAlongside,
      .source = {.document = "ICC A117.1",
                 .edition = "2009 and 2017, Type B units",
                 .section = "1004.11.3.1.1",
                 .read_at = "table of the 2017 standard made by others"},
      .grade = Grade::verifiedSecondHand,
      .why = "A wheelchair stands alongside the basin, or rolls under it.",
      .limit_words = "48 in wide, centred, and 30 in deep; or 30 in wide and 48 in deep under the basin",
      .sizes = {48_in, 30_in, 48_in, 15_in, 60_in},
      .variants = {{.setting = "option", .value = "b", .off = true},
                   {.setting = "text", .value = "fair-housing", .off = true}},
  };
}

}  // namespace elbowroom::us_adaptable
