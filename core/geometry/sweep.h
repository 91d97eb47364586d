// A door leaf as an exact circular sector: where it first touches something as it opens.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/measure.h"

namespace elbowroom {

struct Leaf {
  Point hinge;          // pivot on the face of the wall that the leaf opens towards
  Length width;         // leaf width = sector radius
  Direction closed;     // from the hinge to the latch when closed
  Angle sweep;          // signed; positive counter-clockwise; |sweep| <= 180 degrees (usually 90)
  bool operator==(const Leaf&) const = default;
};

struct Touch {
  Angle opened;    // unsigned angle at which the leaf's line first touches the solid
  Point at;        // the touching point
  int obstacle;    // index into obstacles, -1 for the room's boundary
};

// First touch of the leaf (a segment from the hinge, `reach` long: leaf width plus any hinge stand-off) with
// a solid obstacle while it opens from 0 to |sweep|. Analytic (vertices, edge-arc crossings); contact within
// kContact of the closed position or of the arc does not count. nullopt: it opens fully.
std::optional<Touch> firstTouch(const Leaf& leaf, Length reach, const std::vector<Outline>& obstacles);
// The same against the walls of the room. The leaf's own closed line lies on the boundary and never counts.
std::optional<Touch> firstWallTouch(const Leaf& leaf, const Outline& room);
// Do two leaves' sectors share floor deeper than kContact? The place is a point in both.
std::optional<Point> sectorsMeet(const Leaf& a, const Leaf& b);
// Clearance from the sector (all positions of the leaf) to a solid outline; exact for the arc.
Gap gapToSector(const Leaf& leaf, const Outline& solid);

// pi/4 * width^2 for a quarter turn; generally |sweep|/2 * width^2.
Area sectorArea(const Leaf& leaf);
// The leaf's sector as an outline for drawing.
Outline sectorOutline(const Leaf& leaf, int steps = 32);

}  // namespace elbowroom
