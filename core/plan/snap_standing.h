// Private to core/plan: a fixture that stands free of the walls.
#pragma once

#include "core/plan/snap.h"

namespace elbowroom::snap_parts {

// Keeps the turn it has in the layout; flush to parallel walls and neighbours, in line with their centres,
// else to the step; pushed back inside the room.
Snapped snapStanding(const Layout&, const Fixture& moving, Point wanted, const SnapRules&);

}  // namespace elbowroom::snap_parts
