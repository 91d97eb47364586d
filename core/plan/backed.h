// Whether what a plan states holds a thing on a wall. The one answer that rules, the Wish list and the backing
// schedule go by.
#pragma once

#include <optional>
#include <string_view>

#include "core/plan/plan.h"

namespace elbowroom {

enum class Pull {
  light,  // holders, rails, hooks, shelves, mirrors, heaters: blocking behind it, or the whole wall backed
  bar,    // bars: blocking, or the whole wall backed with plywood of at least 3/4 in (fact backing_plywood); no
          // source found lets 1/2 in plywood alone carry a bar
  heavy   // folding bars, basins and benches that hang: blocking; sources name lumber between the studs only
};
Pull pullOf(const WallItem&);

struct Held {
  std::optional<bool> holds;   // nullopt: the plan does not say
  std::string_view fact = {};  // then: what it would have to say
  bool of_wall = true;         // of the wall, else of the thing
};
// `thing`: the facts of what hangs there (fact blocking).
Held heldBy(const Wall&, const Facts& thing, Pull);

}  // namespace elbowroom
