#include "core/rules/checks/people.h"

namespace elbowroom::comfort {

using namespace literals;

Rule basinHelpChild() {
  return {
      .id = "basin-help-child",
      .book = "comfort",
      .title = "floor for a child and a helper behind",
      .level = Level::advised,
      .compare = Compare::atLeast,
      .limit = 36_in,
      .measure = checks::helpingAtBasins,
      .source = {.document = "Trade article on the placement of bath fixtures",
                 .edition = "",
                 .section = "",
                 .read_at = "supplyht.com article 92491: 18 in for one who stands at the basin, taken twice"},
      .grade = Grade::derived,
      .why = "Whoever helps a child to wash stands behind it.",
      .mends = {Mend::slide, Mend::turn},
  };
}

}  // namespace elbowroom::comfort
