#include "core/rules/checks/wall_spots.h"

#include <algorithm>

namespace elbowroom::checks {

namespace {
using namespace literals;

// Finishes, tiles and a gap behind a fixture: still the wall behind it.
constexpr Length kBehind = 6_in;

bool alike(Direction a, Direction b) { return a.x * b.x + a.y * b.y > 0.99; }

Point rearFace(const Layout& layout, const PlacedFixture& f) {
  if (f.wall < 0) return f.back_center;
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(f.wall)];
  return f.back_center - dot(f.back_center - wall.from, f.facing) * f.facing;
}

}  // namespace

Spot spotOf(const Layout& layout, const PlacedFixture& f, const PlacedWallItem& i) {
  const Point base = rearFace(layout, f);
  const auto out = [&](Point p) { return dot(p - base, f.facing); };
  const auto left = [&](Point p) { return dot(p - base, leftOf(f)); };
  Spot spot;
  spot.out_from = std::min(out(i.left), out(i.right));
  spot.out_to = std::max(out(i.left), out(i.right));
  spot.left_from = std::min(left(i.left), left(i.right));
  spot.left_to = std::max(left(i.left), left(i.right));
  const Direction inward = layout.walls[static_cast<std::size_t>(i.wall)].inward;
  if (alike(inward, f.facing) && abs(spot.out()) <= kBehind) spot.on = Spot::On::rear;
  if (alike(inward, rightOf(f)) && spot.left() > Length{}) spot.on = Spot::On::left;
  if (alike(inward, leftOf(f)) && spot.left() < Length{}) spot.on = Spot::On::right;
  return spot;
}

std::optional<SideWall> wallBeside(const Layout& layout, const PlacedFixture& f, Hand hand, Length within) {
  if (layout.room.empty()) return std::nullopt;
  const Ahead near = aheadOf(centreline(f), hand == Hand::left ? leftOf(f) : rightOf(f), layout, {});
  if (near.distance > within) return std::nullopt;
  const WallFrame* wall = findWallFrame(layout, wallAt(layout, near.at));
  if (wall == nullptr) return std::nullopt;
  return SideWall{wall, hand, near.distance};
}

std::optional<SideWall> nearerWall(const Layout& layout, const PlacedFixture& f, Length within) {
  const auto left = wallBeside(layout, f, Hand::left, within),
             right = wallBeside(layout, f, Hand::right, within);
  if (!left || !right) return left ? left : right;
  return left->distance <= right->distance ? left : right;
}

Length reachFromWall(const Layout& layout, const PlacedFixture& f) {
  return dot(f.front_center - rearFace(layout, f), f.facing);
}

const PlacedFixture* standingUnder(const Layout& layout, const PlacedWallItem& i) {
  const PlacedFixture* deepest = nullptr;
  for (const PlacedFixture& f : layout.fixtures) {
    if (!counts(f) || !f.solid || f.wall != i.wall || i.wall < 0) continue;
    if (abs(spotOf(layout, f, i).left()) >= f.fixture.width / 2) continue;
    if (!deepest || reachFromWall(layout, f) > reachFromWall(layout, *deepest)) deepest = &f;
  }
  return deepest;
}

}  // namespace elbowroom::checks
