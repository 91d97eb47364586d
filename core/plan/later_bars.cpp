#include "core/plan/later_bars.h"

#include <algorithm>

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kWithinReach = 24_in, kAtWall = 1_in;
constexpr Length kBehind = 24_in, kBesideFrom = 12_in, kBesideTo = 54_in;
constexpr Length kShortest = 6_in;  // less than that between openings holds no bar

// A wall that meets this one in a corner of the room and runs into the room from it.
struct Neighbour {
  int wall = -1;
  bool on_left = false;  // its right end is the corner
};
std::vector<Neighbour> neighbours(const Layout& layout, int wall) {
  const int n = static_cast<int>(layout.walls.size());
  const WallFrame& w = layout.walls[static_cast<std::size_t>(wall)];
  std::vector<Neighbour> found;
  const int left = (wall + n - 1) % n, right = (wall + 1) % n;
  if (dot(layout.walls[static_cast<std::size_t>(left)].from - w.from, w.inward) > kAtWall)
    found.push_back({left, true});
  if (dot(layout.walls[static_cast<std::size_t>(right)].to - w.to, w.inward) > kAtWall)
    found.push_back({right, false});
  return found;
}

void add(const Layout& layout, std::vector<LaterBar>& bars, LaterBar bar) {
  const Length end = layout.walls[static_cast<std::size_t>(bar.wall)].length;
  bar.from = std::max(bar.from, Length{});
  bar.to = std::min(bar.to, end);
  std::vector<LaterBar> parts{bar};
  for (const PlacedOpening& o : layout.openings) {
    const Length low = o.opening.kind == OpeningKind::window ? o.opening.sill.value_or(Length{}) : Length{};
    if (o.wall != bar.wall || low >= kBackingHigh || low + o.opening.height <= kBackingLow) continue;
    const Length half = openingWidth(o.opening) / 2, a = o.opening.along - half, b = o.opening.along + half;
    std::vector<LaterBar> left;
    for (LaterBar p : parts) {
      if (b <= p.from || a >= p.to) {
        left.push_back(p);
        continue;
      }
      LaterBar before = p, after = p;
      before.to = a;
      after.from = b;
      left.push_back(before);
      left.push_back(after);
    }
    parts = left;
  }
  for (const LaterBar& p : parts)
    if (p.to - p.from >= kShortest) bars.push_back(p);
}

// Counted from the corner that the neighbour shares with the fixture's wall.
LaterBar fromCorner(const Layout& layout, const Neighbour& n, const ElementId& fixture, Length near, Length far) {
  const Length end = layout.walls[static_cast<std::size_t>(n.wall)].length;
  if (n.on_left) return {fixture, n.wall, end - far, end - near};
  return {fixture, n.wall, near, far};
}

}  // namespace

std::vector<LaterBar> laterBars(const Layout& layout) {
  std::vector<LaterBar> bars;
  for (const PlacedFixture& f : layout.fixtures) {
    const auto* placed = std::get_if<OnWall>(&f.fixture.placement);
    if (f.wall < 0 || placed == nullptr || f.fixture.status == Status::remove) continue;
    const Length end = layout.walls[static_cast<std::size_t>(f.wall)].length;
    const Length half = f.fixture.width / 2, at = placed->along;
    const auto cornerGap = [&](const Neighbour& n) { return n.on_left ? at : end - at; };
    const std::vector<Neighbour> beside = neighbours(layout, f.wall);
    if (f.fixture.kind == FixtureKind::toilet) {
      add(layout, bars, {f.fixture.id, f.wall, at - kBehind / 2, at + kBehind / 2});
      const auto nearer = std::min_element(beside.begin(), beside.end(), [&](const Neighbour& a, const Neighbour& b) {
        return cornerGap(a) < cornerGap(b);
      });
      if (nearer != beside.end() && cornerGap(*nearer) <= kWithinReach)
        add(layout, bars, fromCorner(layout, *nearer, f.fixture.id, kBesideFrom, kBesideTo));
    } else if (f.fixture.kind == FixtureKind::bath || f.fixture.kind == FixtureKind::shower) {
      if (placed->gap <= kAtWall) add(layout, bars, {f.fixture.id, f.wall, at - half, at + half});
      for (const Neighbour& n : beside)
        if (cornerGap(n) - half <= kAtWall)
          add(layout, bars, fromCorner(layout, n, f.fixture.id, Length{}, placed->gap + f.fixture.depth));
    }
  }
  return bars;
}

}  // namespace elbowroom
