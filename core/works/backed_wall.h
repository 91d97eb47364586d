// What follows when a whole wall is backed: it gets thicker, and jambs, boxes and valves have to follow.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

// A wall finished with 1/2 in board on both faces, once that many of its faces carry plywood under board instead
// (common build: 1/2 in under 3/8 in). Worked example T33: 4 1/2 in becomes 4 7/8 or 5 1/4 in, 6 1/2 in 6 7/8 in.
// Precondition: faces 1 or 2.
Length backedWallThickness(Length bare, int faces);
Length backedWallThickness(Length bare, int faces, Length plywood, Length board);
// How much deeper boxes and valves in that face sit behind the finish: 3/8 in of the common build.
Length backingAdds();
// A jamb is 1/16 in deeper than its wall: 4 9/16 in for 4 1/2 in, 6 9/16 in for 6 1/2 in (trade articles on jambs).
Length jambFor(Length wall_thickness);

struct BackedWall {
  ElementId wall;
  Length bare, backed;                // thickness before and after
  std::vector<ElementId> jambs;       // openings whose jamb no longer fits
  std::vector<ElementId> boxes;       // electrical boxes and water valves in the wall that sit deeper
  std::vector<ElementId> recesses;    // niches and cabinets whose frame moves out with the finish
};
// The wall backed on this room's face. Its stated thickness is the bare one unless it is stated to be backed.
// nullopt: no such wall.
std::optional<BackedWall> backedWall(const Layout&, const ElementId& wall);

}  // namespace elbowroom
