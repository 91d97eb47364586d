// What the searches for a place share: how many random rooms are tried, and whether a place that was given is
// truly clear, by GEOS on the raw outlines.
#pragma once

#include <cstdlib>

#include "core/geometry/free_floor.h"
#include "tests/oracle/geos_shapes.h"

namespace elbowroom::oracle {

// ELBOWROOM_ORACLE_ROOMS, 2,000 where it is not set.
inline int rooms() {
  const char* asked = std::getenv("ELBOWROOM_ORACLE_ROOMS");
  return asked ? std::max(1, std::atoi(asked)) : 2000;
}
inline Length in(double v) { return Length::fromInches(v); }

// Every part, moved in by kContact, lies in the room and shares nothing with any thing.
inline bool liesClear(const Scene& scene, const std::vector<Outline>& parts) {
  const Shape room = solid(scene.room);
  for (const Outline& part : parts) {
    const Shape shape = solid(part);
    if (!room->covers(shape.get())) return false;
    for (const Outline& thing : scene.things)
      if (solid(thing)->intersects(shape.get())) return false;
  }
  return true;
}
inline const double kMovedIn = kContact.inches() + 2e-6;  // and the rounding of turns and places
inline Outline movedIn(double along, double across, Placed place) {
  return rectangleOutline(in(along - 2 * kMovedIn), in(across - 2 * kMovedIn), place);
}

}  // namespace elbowroom::oracle
