// Commands on things of the walls, each answering the items to put as one edit; empty: it would change nothing or
// cannot be done. Pure. Things are arranged with others of the same wall only.
#pragma once

#include <span>
#include <vector>

#include "core/plan/snap_wall_item.h"

namespace elbowroom {

enum class Arrange { lefts, centres, rights, tops, middles, bottoms };
// Lines the items up with the one that reaches furthest that way; centres and middles with the mean of the outermost
// edges. At least two items on one wall.
std::vector<WallItem> arranged(const Layout&, std::span<const ElementId>, Arrange);
// Equal gaps between neighbours; the outer two stay. At least three items on one wall.
std::vector<WallItem> spacedEvenly(const Layout&, std::span<const ElementId>);
// The items as seen in a mirror at a centreline of their wall; what would leave the wall is an error: empty.
std::vector<WallItem> mirroredAbout(const Layout&, std::span<const ElementId>, Length along);
// From corner to corner of its wall, or between the nearest windows and doors at its height.
std::vector<WallItem> wallToWall(const Layout&, const ElementId& item);
// From the rim of the basin below it (its own lower edge when none is) up to the ceiling.
std::vector<WallItem> counterToCeiling(const Layout&, const ElementId& item);
// With its middle at this height, as far as floor and ceiling allow, set for that person.
std::vector<WallItem> atHeight(const Layout&, std::span<const ElementId>, const HeightLine&);
// By the least way to where it stands in one stud bay (core/plan/bays.h). Nothing where it does already, where no bay
// is wide enough, and where the studs are not known.
std::vector<WallItem> intoBay(const Layout&, const ElementId& item);

}  // namespace elbowroom
