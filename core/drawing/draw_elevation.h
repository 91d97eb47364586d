// The walls of a room side by side as one sees them from inside: the developed elevation.
#pragma once

#include <vector>

#include "core/drawing/draw_plan.h"

namespace elbowroom {

// Where a wall lies in the strip: x of its left end, its length.
struct StripWall {
  ElementId id;
  Length x, length;
};
struct WallStripDrawing {
  DisplayList list;              // x along the walls from 0, y above the finished floor
  std::vector<StripWall> walls;  // in the room's order, left to right
  Box bounds;                    // walls, names above and figures below; a zero box without walls
  Length ceiling;                // drawn height; 8 ft when the plan does not state it (then drawn dashed)
  bool ceiling_stated = true;
};
// Unrolls the walls in their order (clockwise, so that left and right are as seen facing each wall). Fixtures
// appear on the wall they stand on; one that also touches another wall shows there as an outline of its side.
// A height the plan does not state is drawn as the kind's usual one, dashed.
WallStripDrawing drawWallStrip(const Layout&, const DrawStyle&);

}  // namespace elbowroom
