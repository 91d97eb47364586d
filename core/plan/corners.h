// What reaches a corner of the room and so shows on the neighbour wall too, from its side.
#pragma once

#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

struct CornerTouch {
  ElementId id;          // a fixture or a thing on a wall
  ElementId wall;        // the neighbour, on which it also shows
  bool at_left = false;  // at that wall's left end; else at its right end
  Length from, to;       // what it covers of that wall, from its left end
  Length low, high;      // above the finished floor
};

// A fixture reaches a corner when it comes within 3 in of both walls there (as it is drawn on elevations), a
// thing on a wall within 1/2 in. What goes into its wall, has no depth or is to be removed shows nowhere
// else. In the order of the walls.
std::vector<CornerTouch> cornerTouches(const Layout&);

}  // namespace elbowroom
