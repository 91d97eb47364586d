// Several things moved together on the plan: what stands free and what hangs on the ceiling goes by the
// vector, what is on a wall along its wall by the part of the vector that runs along it. Pure.
#pragma once

#include <set>

#include "core/plan/edit.h"
#include "core/plan/layout.h"

namespace elbowroom {

// Openings and things on walls stay within the ends of their walls. What would not move is left out. With a
// `step`, what is on a wall goes by the whole of it either way, however the wall is turned; by nothing where
// the vector is across the wall.
PutThings movedBy(const Layout&, const std::set<ElementId>& ids, Vector by, std::optional<Length> step = {});

}  // namespace elbowroom
