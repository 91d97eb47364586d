#include "core/plan/corners.h"

#include <algorithm>

#include "core/plan/catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kFixtureNear = Length::nanometres(76'200'000);  // 3 in
constexpr Length kItemNear = Length::nanometres(12'700'000);     // 1/2 in

// How an outline lies to a wall: its stretch along it, and how near it comes to the wall's face.
struct Beside {
  Length from, to, nearest;
};
Beside beside(const WallFrame& wall, const Outline& outline) {
  Beside b;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const Length along = dot(outline[i] - wall.from, wall.along),
                 off = dot(outline[i] - wall.from, wall.inward);
    b.from = i == 0 ? along : std::min(b.from, along);
    b.to = i == 0 ? along : std::max(b.to, along);
    b.nearest = i == 0 ? off : std::min(b.nearest, off);
  }
  return b;
}

struct Thing {
  ElementId id;
  int wall;  // its own; -1: it stands free
  const Outline& outline;
  Length near, low, high;
};

// Seen from the wall `index`: the corner at its right end, then the one at the right end of the wall before
// it.
void touchesOf(const Layout& layout, const Thing& thing, std::vector<std::vector<CornerTouch>>& found) {
  const int count = static_cast<int>(layout.walls.size());
  for (int left = 0; left < count; ++left) {
    const int right = (left + 1) % count;
    if (thing.wall >= 0 && thing.wall != left && thing.wall != right) continue;
    const WallFrame &a = layout.walls[static_cast<std::size_t>(left)],
                    &b = layout.walls[static_cast<std::size_t>(right)];
    const Beside to_a = beside(a, thing.outline), to_b = beside(b, thing.outline);
    if (abs(to_a.nearest) > thing.near || abs(to_b.nearest) > thing.near) continue;
    if (to_a.to < a.length - thing.near || to_b.from > thing.near) continue;
    const auto add = [&](int wall, const Beside& at, bool at_left) {
      const WallFrame& frame = layout.walls[static_cast<std::size_t>(wall)];
      const Length from = std::clamp(at.from, Length{}, frame.length),
                   to = std::clamp(at.to, Length{}, frame.length);
      if (wall != thing.wall && to > from)
        found[static_cast<std::size_t>(wall)].push_back(
            {thing.id, frame.id, at_left, from, to, thing.low, thing.high});
    };
    add(left, to_a, false);
    add(right, to_b, true);
  }
}

}  // namespace

std::vector<CornerTouch> cornerTouches(const Layout& layout) {
  std::vector<std::vector<CornerTouch>> found(layout.walls.size());
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.status != Status::remove && !f.footprint.empty())
      touchesOf(layout, {f.fixture.id, f.wall, f.footprint, kFixtureNear, Length{}, heightOf(f.fixture)},
                found);
  for (const PlacedWallItem& i : layout.on_walls)
    if (i.wall >= 0 && !i.recessed && i.depth > Length{} && i.item.status != Status::remove)
      touchesOf(layout, {i.item.id, i.wall, i.outline, kItemNear, i.bottom, i.top}, found);
  std::vector<CornerTouch> all;
  for (const auto& of_wall : found) all.insert(all.end(), of_wall.begin(), of_wall.end());
  return all;
}

}  // namespace elbowroom
