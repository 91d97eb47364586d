// Walls as one sees them from inside: one alone (elevation), or all of a room side by side (the Wall strip).
#pragma once

#include <set>
#include <vector>

#include "core/drawing/draw_plan.h"
#include "core/works/backing.h"
#include "core/works/electrical_zones.h"

namespace elbowroom {

// What is shown beyond the wall, its openings, the fixtures before it and the things on it.
struct StripLayers {
  bool studs = false;       // dashed, with the clear bays' widths where there is room
  bool people = false;      // eye, elbow and reach lines of the plan's people, where something goes by them
  bool backing = false;     // where blocking or plywood is wanted behind the finish
  bool electrical = false;  // zones that rules on wiring speak of
  bool dimensions = false;  // heights above the finished floor and distances along the wall
  bool operator==(const StripLayers&) const = default;
};

// Where a wall lies in the strip: x of its left end, its length.
struct StripWall {
  ElementId id;
  Length x, length;
};
struct WallStripDrawing {
  DisplayList list;              // x along the walls from 0, y above the finished floor
  std::vector<StripWall> walls;  // in the room's order, left to right
  Box bounds;                    // walls, names above and figures below; a zero box without walls
  Length ceiling;                // its highest; 8 ft when the plan does not state it (then drawn dashed)
  bool ceiling_stated = true;
  std::vector<BackingZone> backing;         // what these layers show, found for the whole room at once
  std::vector<ElectricalZone> electrical;
};
// What the strip's labels keep clear of, and whose come first. A label that finds no quiet place is left out,
// the thing it belongs to never.
struct LabelsAmid {
  std::vector<Box> taken;
  std::set<ElementId> first;
};
// Unrolls the walls in their order (clockwise, so that left and right are as seen facing each wall). Fixtures
// appear on the wall they stand on; one that also touches another wall shows there as an outline of its side.
// A height the plan does not state is drawn as the kind's usual one, dashed. A sloped ceiling cuts the walls.
WallStripDrawing drawWallStrip(const Layout&, const DrawStyle&, const StripLayers& = {});
// The same in two steps: everything but words and figures; then these, at the end of the list.
WallStripDrawing drawWallFaces(const Layout&, const DrawStyle&, const StripLayers&);
void labelWallStrip(WallStripDrawing&, const Layout&, const DrawStyle&, const StripLayers&,
                    const LabelsAmid&);
// Paper or screen that the strip's texts take above and below the walls, in millimetres.
double stripTextMm(const StripLayers&);

struct ElevationDrawing {
  DisplayList list;  // x from the wall's left end, y above the finished floor
  Box bounds;        // everything, dimension strings included
  Length ceiling;    // as above
  bool ceiling_stated = true;
};
// One wall, drawn as on the strip; dimension strings stand outside the wall, on all four sides.
// Precondition: wall < layout.walls.size().
ElevationDrawing drawElevation(const Layout&, std::size_t wall, const StripLayers&, const DrawStyle&);

}  // namespace elbowroom
