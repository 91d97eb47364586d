#include "core/rules/checks/in_walls.h"

namespace elbowroom::craft {

using namespace literals;

Rule grabBarPlywood() {
  return {
      .id = "grab-bar-plywood",
      .book = "craft",
      .title = "plywood behind it",
      .level = Level::craft,
      .compare = Compare::atLeast,
      .limit = 0.75_in,
      .measure = checks::grabBarPlywood,
      .source = {.document = "Trade article on backing for grab bars",
                 .edition = "",
                 .section = "",
                 .read_at = "jlconline.com and finehomebuilding.com: 3/4 in plywood over the whole wall; 1/2 in "
                            "is common, and no source found lets it carry a bar"},
      .grade = Grade::verifiedSecondHand,
      .why = "A bar bears 250 pounds at any point, by the 2010 ADA Standards 609.8; thin plywood lets its screws go.",
      .mends = {Mend::state},
  };
}

}  // namespace elbowroom::craft
