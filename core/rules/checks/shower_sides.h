// The four sides of a shower's rectangle, for glass, doors and ways in.
#pragma once

#include <array>

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

struct ShowerSide {
  Side side = Side::front;
  Segment line;  // from its left to its right end, both as seen from outside the shower
  Direction out;
  Length length;
};
ShowerSide sideOf(const PlacedFixture&, Side);
std::array<ShowerSide, 4> sidesOf(const PlacedFixture&);
// A receptor stands up to 1 in from a wall where the finish fills the gap.
bool atWall(const Layout&, const ShowerSide&);
// The glass of one side; nullptr: none is stated.
const Pane* paneOf(const Fixture&, Side);

}  // namespace elbowroom::checks
