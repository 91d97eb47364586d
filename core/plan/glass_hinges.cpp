#include "core/plan/glass_hinges.h"

#include <cmath>

#include "core/geometry/measure.h"
#include "core/plan/fixture_sides.h"

namespace elbowroom {

using namespace literals;

namespace {
constexpr Length kAtWall = 1_in;
}  // namespace

std::vector<GlassHinge> glassHinges(const Layout& layout) {
  std::vector<GlassHinge> hinges;
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.fixture.status == Status::remove) continue;
    for (const FixtureSide& side : sidesOf(layout, f)) {
      if (side.pane == nullptr || !side.pane->door || !side.pane->hinge) continue;
      const Point at = *side.pane->hinge == Hand::left ? side.line.a : side.line.b;
      for (std::size_t w = 0; w < layout.walls.size(); ++w) {
        const WallFrame& wall = layout.walls[w];
        const bool across = std::abs(dot(1_in * wall.along, side.out).inches()) > 0.7;
        const Length along = dot(at - wall.from, wall.along), off = dot(at - wall.from, wall.inward);
        if (!across || abs(off) > kAtWall || along < -kAtWall || along > wall.length + kAtWall) continue;
        hinges.push_back({f.fixture.id, static_cast<int>(w), along, side.pane->height, at});
        break;
      }
    }
  }
  return hinges;
}

}  // namespace elbowroom
