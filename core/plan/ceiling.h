// How high the ceiling is: level at its stated height, lower where it falls toward a wall. A slope is a plane
// over the whole room: `low` on the line of its wall's inside face (and behind it), rising evenly to the
// ceiling's height at `run` from that line; where several slopes meet the lowest counts.
//
// All answers are above the finished floor and exact to a nanometre; nullopt when the plan does not state the
// ceiling's height. A slope that names no wall of the layout is left out.
#pragma once

#include <optional>
#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

std::optional<Length> ceilingHeightAt(const Layout&, Point);

// The lowest ceiling over an area and a place where it is that low. Precondition: the outline is not empty.
// Exact for any simple outline: the height never falls away from a wall, so a corner of the outline is
// lowest.
struct LowCeiling {
  Length height;
  Point at;
};
std::optional<LowCeiling> lowestCeilingOver(const Layout&, const Outline&);

// How much of an area has a ceiling of at least this height, and that part of it (empty: none). Of an outline
// that is not convex the part may come out with edges that run forth and back along a line and enclose
// nothing.
std::optional<Area> areaWithCeiling(const Layout&, const Outline&, Length at_least);
std::optional<Outline> partWithCeiling(const Layout&, const Outline&, Length at_least);

// The ceiling's line along a segment, from `a` to `b`, as one sees it on a wall: its ends and every bend.
struct CeilingPoint {
  Length along;  // from the segment's first end
  Length height;
};
std::optional<std::vector<CeilingPoint>> ceilingAlong(const Layout&, Segment);

}  // namespace elbowroom
