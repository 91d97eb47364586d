#include "core/plan/fixture_sides.h"

namespace elbowroom {

using namespace literals;

std::array<FixtureSide, 4> sidesOf(const Layout& layout, const PlacedFixture& f) {
  std::array<FixtureSide, 4> sides{{{Side::front, f.front, f.facing, false, nullptr},
                                    {Side::left, f.left_side, f.facing.right(), false, nullptr},
                                    {Side::right, {f.right_side.b, f.right_side.a}, f.facing.left(), false, nullptr},
                                    {Side::back, {f.right_side.a, f.left_side.a}, f.facing.opposite(), false, nullptr}}};
  for (FixtureSide& s : sides) {
    s.at_wall = !layout.room.empty() && clearAhead(s.line, s.out, layout.room, {}).distance < 1_in;
    for (const Pane& pane : f.fixture.glass)
      if (pane.side == s.side) s.pane = &pane;
  }
  return sides;
}

}  // namespace elbowroom
