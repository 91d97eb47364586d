// Where a dragged element wants to be, and why. Pure functions: cursor in, placement and reason out.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

enum class SnapReason { none, wall, corner, neighbour, wallCentre, alignedCentre, step, rightAngle, halfAngle, closing,
                        endPoint };
std::string_view wordsOf(SnapReason);  // "against the wall", "into the corner", "beside the next fixture", ...

struct Snapped {
  Placement placement;
  SnapReason reason = SnapReason::none;
  std::optional<ElementId> other;  // what it snapped to
  std::optional<Segment> guide;    // a line to draw for an alignment
};

struct SnapRules {
  bool enabled = true;      // false while the person holds the key that switches snapping off
  Length reach;             // how near is near enough, in plan lengths (about 8 px on screen)
  Length step;              // grid for free values: 1/2 in or 10 mm
};

// A fixture whose centre the cursor holds at `wanted`. Sticks to the wall the cursor is at or nearest to (its back turns
// to it) when the kind wants a wall and the wall is within reach of its back, or within its depth of the cursor; slides
// round corners to the next wall; snaps flush to corners and neighbours, to the wall's middle and to aligned
// centrelines; otherwise stands free with its turn kept. When not enabled: exact position, wall kept if near.
Snapped snapFixture(const Layout&, const Fixture& moving, Point wanted, const SnapRules&);

struct SnappedAlong {
  ElementId wall;
  Length along;
  SnapReason reason = SnapReason::none;
};
// An opening dragged to `wanted`: slides along its wall, changes to the wall under the cursor, never off its end.
std::optional<SnappedAlong> snapOpening(const Layout&, const Opening& moving, Point wanted, const SnapRules&);

struct SnappedPoint {
  Point point;
  SnapReason reason = SnapReason::none;
  std::optional<Segment> guide;
};
// The next corner while drawing walls: `so_far` are the corners already placed. Right angles and 45 degrees
// to the previous wall and the sheet, alignment with earlier corners, closing on the start; lengths to `step`.
SnappedPoint snapCorner(const std::vector<Point>& so_far, Point wanted, const SnapRules&);

// Free distances beside and before an element on its wall (or four sides when standing free): what the live
// dimensions show and what typing changes.
struct SideGap {
  Length distance;
  Segment line;        // dimension line from the element's edge to what limits it
  ElementId other;     // the neighbour or wall that limits
  Direction grow;      // the way the element moves to make this gap larger
};
std::vector<SideGap> sideGaps(const Layout&, const ElementId& element);
// The placement that makes the given side gap exactly `wanted`.
std::optional<Placement> placeForGap(const Layout&, const ElementId& fixture, const SideGap& gap, Length wanted);

}  // namespace elbowroom
