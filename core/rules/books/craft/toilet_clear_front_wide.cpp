#include "core/rules/checks/fronts.h"

namespace elbowroom::craft {

using namespace literals;

Rule toiletClearFrontWide() {
  return {
      .id = "toilet-clear-front-wide",
      .book = "craft",
      .title = "clear floor in front, 30 in wide",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = 21_in,
      .measure = checks::toiletWideFronts,
      .source = {.document = "IRC, as some read it",
                 .edition = "2009",
                 .section = "P2705.1(5)",
                 .read_at = "thebuildingcodeforum.com thread on what in-front-of means"},
      .grade = Grade::derived,
      .why = "The text gives no width; some inspectors expect the 30 in between the two sides.",
  };
}

}  // namespace elbowroom::craft
