// The widest ways (core/geometry/routes.h) across one floor from several places.
#pragma once

#include <memory>
#include <vector>

#include "core/geometry/free_floor.h"
#include "core/geometry/routes.h"

namespace elbowroom {

// What lies between the outlines is worked out once, however many starts follow. A copy is cheap.
class WidestWays {
 public:
  explicit WidestWays(const FreeFloor& floor);
  // The widest way to each target. Within 0.02 in of exact. Target and start are moved to the nearest free
  // floor when they stand in or on an obstacle. Width is also limited at neither end: the disc need only
  // reach within its own radius of the target. (geometry.md 1.6 names the trap: no grid floods.) Ways no
  // wider than `than` are given as not reachable, in less time.
  std::vector<Route> from(Point start, const std::vector<Point>& targets, Length than = {}) const;

 private:
  struct Floor;
  std::shared_ptr<Floor> floor_;
};

}  // namespace elbowroom
