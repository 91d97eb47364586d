#include "core/rules/checks/shower_sides.h"

#include <algorithm>

namespace elbowroom::checks {

ShowerSide sideOf(const PlacedFixture& f, Side side) {
  const Length width = f.fixture.width, depth = f.fixture.depth;
  switch (side) {
    case Side::front:
      return {side, f.front, f.facing, width};
    case Side::back:
      return {side, {f.right_side.a, f.left_side.a}, f.facing.opposite(), width};
    case Side::left:
      return {side, f.left_side, leftOf(f), depth};
    case Side::right:
      return {side, {f.right_side.b, f.right_side.a}, rightOf(f), depth};
  }
  return {};
}

std::array<ShowerSide, 4> sidesOf(const PlacedFixture& f) {
  return {sideOf(f, Side::front), sideOf(f, Side::left), sideOf(f, Side::right), sideOf(f, Side::back)};
}

bool atWall(const Layout& layout, const ShowerSide& side) {
  using namespace literals;
  return !layout.room.empty() && clearAhead(side.line, side.out, layout.room, {}).distance < 1_in;
}

const Pane* paneOf(const Fixture& f, Side side) {
  const auto pane =
      std::find_if(f.glass.begin(), f.glass.end(), [&](const Pane& p) { return p.side == side; });
  return pane == f.glass.end() ? nullptr : &*pane;
}

}  // namespace elbowroom::checks
