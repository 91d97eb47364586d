// The widest ways (core/geometry/routes.h) across one floor from several places.
#pragma once

#include <memory>
#include <vector>

#include "core/geometry/routes.h"

namespace elbowroom {

// What lies between the outlines is worked out once, however many starts follow. A copy is cheap.
class WidestWays {
 public:
  WidestWays(const Outline& room, const std::vector<Outline>& obstacles);
  // What widestRoutes gives for this floor.
  std::vector<Route> from(Point start, const std::vector<Point>& targets) const;

 private:
  struct Floor;
  std::shared_ptr<Floor> floor_;
};

}  // namespace elbowroom
