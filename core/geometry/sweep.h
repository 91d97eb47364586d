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
// kContact of the closed position, of the fully open position or of the arc does not count. nullopt: it opens
// fully. What does count is met where the full reach meets it: a thing that stands against the closed leaf,
// or within kContact of it, and is more than a contact stops it at 0. On a tie the lower index is named.
std::optional<Touch> firstTouch(const Leaf& leaf, Length reach, const std::vector<Outline>& obstacles);
// The same, `reach` being the width, against the walls of the room. The leaf's own closed line lies on the
// boundary and never counts. Precondition: the leaf opens into the room.
std::optional<Touch> firstWallTouch(const Leaf& leaf, const Outline& room);
// Do two leaves' sectors share floor deeper than kContact? The place is a point in both.
std::optional<Point> sectorsMeet(const Leaf& a, const Leaf& b);
// Clearance from the sector (all positions of the leaf) to a solid outline; exact for the arc. `from` is on
// the sector. Overlap: the solid reaches deeper than kContact into the sector.
Gap gapToSector(const Leaf& leaf, const Outline& solid);

// pi/4 * width^2 for a quarter turn; generally |sweep|/2 * width^2.
Area sectorArea(const Leaf& leaf);
// The leaf's sector as an outline for drawing.
Outline sectorOutline(const Leaf& leaf, int steps = 32);

}  // namespace elbowroom
