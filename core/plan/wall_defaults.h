// What a thing on a wall starts with where it is put: whose it is, and which centreline it takes. Pure.
#pragma once

#include <optional>

#include "core/plan/layout.h"

namespace elbowroom {

// The shower or bath that stands at this place of the wall, with its back or a side to it; empty: none.
ElementId showerAt(const Layout&, const ElementId& wall, Length along);
// The centreline of the basin (of a double, of the nearer bowl) whose width covers this place of the wall.
std::optional<Length> basinCentreAt(const Layout&, const ElementId& wall, Length along);
// The item with what its place tells: things of a shower name it, a mirror over a basin takes its centreline,
// what goes into the wall is no deeper than its studs.
// What it names already stays.
WallItem withDefaults(const Layout&, WallItem item);

// A ceiling item held so that its centre is at `wanted`: in line with fixtures, openings, other ceiling items or the
// middle of the room within reach (each axis for itself), else at the next step. Not enabled: exactly there.
struct SnappedCeiling {
  Point at;
  std::optional<Segment> guide_x, guide_y;  // what it lines up with
};
struct SnapRules;
SnappedCeiling snapCeilingItem(const Layout&, const CeilingItem& moving, Point wanted, const SnapRules&);

}  // namespace elbowroom
