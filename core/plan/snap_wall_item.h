// Where a thing dragged on a wall wants to be, and why; its free distances and what typing one of them means.
// Pure. Places on a wall are points (x along from the wall's left end, y above the finished floor).
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

#include "core/plan/snap.h"

namespace elbowroom {

// A thing as the rectangle it covers on a wall: an item, an opening, a fixture that stands there.
struct WallBox {
  ElementId id, wall;
  Length left, right;  // from the wall's left end
  Length low, high;    // above the finished floor
  Length middle() const { return (left + right) / 2; }
  Length centreHeight() const { return (low + high) / 2; }
};
// nullopt: no such thing, or it stands free. A fixture's height is its own, else the usual one of its kind.
std::optional<WallBox> wallBoxOf(const Layout&, const ElementId& id);
// Everything on one wall: openings, fixtures with their back to it, items. What is to be removed is left out.
std::vector<WallBox> wallBoxesOn(const Layout&, const ElementId& wall);

// Floor to ceiling where the wall's inside face is, sloped ceilings included; nullopt: the plan does not state it.
// `along` is clamped to the wall.
std::optional<Length> ceilingOn(const Layout&, const ElementId& wall, Length along);

enum class WallSnapReason {
  none, corner, wallCentre, fixtureCentre, openingCentre, itemCentre, itemEdge, bayCentre,  // along
  floor, ceiling, rim, eye, usual, itemMiddle, itemTop, itemBottom,                         // in height
  step
};
std::string_view wordsOf(WallSnapReason);  // "on a centreline below", "with its middle at eye level", ...

// A height for the middle of a thing: eye level of the person named, or, without a name, the usual one of its kind.
struct HeightLine {
  std::string name;
  Length height;
};

struct WallSnap {
  WallSnapReason reason = WallSnapReason::none;
  ElementId other;           // what it lines up with
  std::string person = {};   // eye level of whom
  std::optional<Segment> guide = {};  // a line to draw, in the wall's figures
};
struct WallSnapped {
  ElementId wall;
  Length middle, bottom;  // along, of its centreline; of its lower edge
  WallSnap along, height;
};

// `moving` held so that its centre is at `wanted` on its wall. Past a corner it goes over to the neighbour wall,
// unless that is narrower than the thing. It never leaves its wall's ends, the floor or the ceiling. With rules
// enabled it takes the nearest of what it lines up with within reach, else the next step (counted from the nearer
// corner to its centreline, and from the floor to its lower edge); not enabled: exactly there.
WallSnapped snapOnWall(const Layout&, const WallBox& moving, Point wanted, const SnapRules&,
                       std::span<const HeightLine> eyes = {});

enum class WallSide { left, right, below, above };
// A free distance of a thing on its wall. The first six that exist, in this order: above the floor, from the left
// corner, from the right corner, to the neighbour on the left and on the right at its height, to the ceiling.
// Things up to 6 in wide and high (boxes, hooks, heads) are measured from their centre, as the trade gives them.
struct WallGap {
  WallSide side = WallSide::below;
  ElementId other;        // the neighbour; empty: the floor, a corner, the ceiling
  Length distance;
  Segment line;           // from the thing to what limits it, in the wall's figures
  bool to_centre = false;
};
// Items and windows have all of them; doors and fixtures only the ones along the wall.
std::vector<WallGap> wallGaps(const Layout&, const ElementId& id);
// Its rectangle with that distance exactly `wanted`; nullopt: that would put it off its wall.
std::optional<WallBox> boxForWallGap(const Layout&, const ElementId& id, const WallGap& gap, Length wanted);

}  // namespace elbowroom
