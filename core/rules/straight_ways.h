// Ways from the door to the fixtures made of two or three straight pieces: found in a fraction of the time
// that the widest way takes, and good enough where they are wide.
#pragma once

#include <vector>

#include "core/geometry/routes.h"
#include "core/plan/layout.h"

namespace elbowroom {

// Ends of the routes that core/rules/measures.h gives: just inside the first door, and where a person stands
// before each of Layout::solid. nullopt without a door in a wall or without a room.
struct RouteEnds {
  Point start;
  Direction inward;
  std::vector<Point> targets;
};
std::optional<RouteEnds> routeEnds(const Layout&);

// Things that somebody goes to: toilets, bidets, basins, baths and showers.
bool isGoal(FixtureKind kind);

// One for each of Layout::solid that is such a thing: a way that a disc of Route::width can travel, so never
// wider than the widest; not reachable when no such way of at least 37 in was found. It passes `middle` where
// other ways do not fit. Empty without ends.
std::vector<Route> straightWays(const Layout&, Point middle);

}  // namespace elbowroom
