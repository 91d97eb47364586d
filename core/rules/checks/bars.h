// What counts as which bar.
#pragma once

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/wall_spots.h"

namespace elbowroom::checks {

// Both arms of an L count; a fold-down bar is neither.
inline bool alongWall(const PlacedWallItem& i) {
  return is(i.item, WallUse::grabBar) && i.item.kind != "grab-bar-fold" &&
         (i.item.kind == "grab-bar-l" || i.item.width >= i.item.height);
}
inline bool upright(const PlacedWallItem& i) {
  return is(i.item, WallUse::grabBar) && i.item.kind != "grab-bar-fold" &&
         (i.item.kind == "grab-bar-l" || i.item.height > i.item.width);
}

// Bars along the wall behind a bath, the highest first.
std::vector<const PlacedWallItem*> barsBehind(const Layout&, const PlacedFixture& bath);
// The lower of two bars behind a bath (2010 ADA Standards 607.4).
bool isLowerBathBar(const Layout&, const PlacedWallItem&);

}  // namespace elbowroom::checks
