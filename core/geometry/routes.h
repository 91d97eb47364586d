// The widest way across the free floor from one point to another, and its narrowest place.
#pragma once

#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom {

struct Route {
  bool reachable = false;
  Length width;           // diameter of the largest disc that can travel all the way; never above the truth
  Point narrowest;        // middle of the narrowest place
  Segment sides;          // the two nearest points that pinch there
};

// One route per target, from `start`. Within 0.02 in of exact. Target and start are moved to the nearest free
// floor when they stand in or on an obstacle. Width is also limited at neither end: the disc need only
// reach within its own radius of the target. (geometry.md 1.6 names the trap: no grid floods.)
std::vector<Route> widestRoutes(const Outline& room, const std::vector<Outline>& obstacles, Point start,
                                const std::vector<Point>& targets);

}  // namespace elbowroom
