// A mirror as large as its wall allows, as one command: side to side between what stands beside it, from the
// counter or its backsplash up to the ceiling.
#pragma once

#include <optional>

#include "core/plan/snap_wall_item.h"

namespace elbowroom {

// The item with the place and size of the largest upright rectangle that holds its centreline, stands on the
// rim (with the backsplash, as stated) of the highest fixture below it (its own lower edge where there is
// none) and stays clear of the corners, openings, fixtures that reach higher (also those that stand out of
// the neighbour walls), other things on the wall and the ceiling, sloped ones included. Lights, receptacles,
// switches and boxes do not limit it: they get holes. nullopt: no such wall, no stated ceiling, or nothing of
// at least 1 in is left. The item need not be in the plan. Exact to a nanometre.
std::optional<WallItem> fullMirror(const Layout&, WallItem);

}  // namespace elbowroom
