#include "core/rules/straight_ways.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdint>

#include "core/rules/check.h"

namespace elbowroom {

namespace {
using namespace literals;

// A route ends where a person stands before the fixture.
constexpr Length kStandBefore = 15_in;
constexpr Length kJustInside = 1_in;
constexpr Length kFar = Length::nanometres(INT64_MAX / 4);  // boxes can grow by it
// Half the widths that are tried, one after the other; the widest that fits counts.
const std::array kHalves{18.5_in, 20.5_in, 24_in, 30_in};

Box boxOf(Segment s) {
  return {{std::min(s.a.x, s.b.x), std::min(s.a.y, s.b.y)}, {std::max(s.a.x, s.b.x), std::max(s.a.y, s.b.y)}};
}

class Boundary {
 public:
  explicit Boundary(const Layout& layout) : layout_(layout) {
    add(layout.room);
    for (const Outline& o : layout.solid_outlines) add(o);
  }
  bool isFree(Point p) const {
    if (!contains(layout_.room, p)) return false;
    return std::none_of(layout_.solid_outlines.begin(), layout_.solid_outlines.end(),
                        [&](const Outline& o) { return contains(o, p); });
  }
  // What comes nearest, if that is nearer than `least`; where something is nearer than `enough`, anything
  // that is.
  void nearest(Segment way, Length enough, Gap& least) const {
    const Box round = boxOf(way);
    for (const Edge& edge : edges_) {
      if (least.distance < enough) return;
      if (!touch(grown(round, least.distance), edge.box)) continue;
      if (const Gap gap = gapBetween(way, edge.line); gap.distance < least.distance) least = gap;
    }
  }

 private:
  void add(const Outline& ring) {
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Segment line{ring[i], ring[(i + 1) % ring.size()]};
      edges_.push_back({line, boxOf(line)});
    }
  }
  struct Edge {
    Segment line;
    Box box;
  };
  const Layout& layout_;
  std::vector<Edge> edges_;
};

// Where the line from `a` along `u` meets the line from `b` along `v`; halfway between when they run alike.
Point crossing(Point a, Direction u, Point b, Direction v) {
  const double turn = u.x * v.y - u.y * v.x;
  if (std::fabs(turn) < 0.1) return midpoint(a, b);
  const double t = ((b.x - a.x).inches() * v.y - (b.y - a.y).inches() * v.x) / turn;
  return a + Length::fromInches(t) * u;
}

using Stops = std::array<Point, 3>;

// Discs touch the door's wall and the fixture at the ends of the way, and so hold the ends of the route.
Stops stopsOf(const RouteEnds& ends, std::size_t which, Direction facing, Point middle, int kind,
              Length half) {
  const Point from = ends.start + (half - kJustInside) * ends.inward;
  const Point to = ends.targets[which] + (half - kStandBefore) * facing;
  switch (kind) {
    case 0:
      return {from, midpoint(from, to), to};
    case 1:
      return {from, crossing(from, ends.inward, to, facing), to};
    case 2:
      return {from, crossing(from, ends.inward.left(), to, facing.left()), to};
    default:
      return {from, middle, to};
  }
}

// The way past these stops where a disc of this half width travels it.
bool travel(const Boundary& boundary, const Stops& stops, Length half, Route& way) {
  const Length enough = half - kMetTolerance / 2;
  Gap narrowest{kFar, {}, {}};
  for (std::size_t i = 0; i + 1 < stops.size(); ++i)
    boundary.nearest({stops[i], stops[i + 1]}, enough, narrowest);
  if (narrowest.distance < enough) return false;
  if (!boundary.isFree(stops[0])) return false;
  // The gap's first end lies on the way, its second on the boundary.
  way.reachable = true;
  way.width = std::min(narrowest.distance, half) * 2;
  way.narrowest = narrowest.from;
  way.sides = {narrowest.to, narrowest.from + (narrowest.from - narrowest.to)};
  return true;
}

}  // namespace

std::optional<RouteEnds> routeEnds(const Layout& layout) {
  const auto door = std::find_if(layout.openings.begin(), layout.openings.end(), [](const PlacedOpening& o) {
    return o.opening.kind == OpeningKind::door && o.wall >= 0;
  });
  if (door == layout.openings.end() || layout.room.empty()) return std::nullopt;
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(door->wall)];
  RouteEnds ends{midpoint(door->left, door->right) + kJustInside * wall.inward, wall.inward, {}};
  for (const int i : layout.solid) {
    const PlacedFixture& f = layout.fixtures[static_cast<std::size_t>(i)];
    ends.targets.push_back(f.front_center + kStandBefore * f.facing);
  }
  return ends;
}

bool isGoal(FixtureKind kind) {
  using enum FixtureKind;
  return kind == toilet || kind == bidet || kind == basin || kind == vanity || kind == bath ||
         kind == freestandingBath || kind == shower;
}

std::vector<Route> straightWays(const Layout& layout, Point middle) {
  const std::optional<RouteEnds> ends = routeEnds(layout);
  if (!ends) return {};
  const Boundary boundary(layout);
  std::vector<Route> ways(ends->targets.size());
  for (std::size_t i = 0; i < ways.size(); ++i) {
    const PlacedFixture& fixture = layout.fixtures[static_cast<std::size_t>(layout.solid[i])];
    if (!isGoal(fixture.fixture.kind)) continue;
    const Direction facing = fixture.facing;
    const auto fits = [&](int kind, Length half) {
      return travel(boundary, stopsOf(*ends, i, facing, middle, kind, half), half, ways[i]);
    };
    for (int kind = 0; kind < 4; ++kind) {
      if (!fits(kind, kHalves[0])) continue;
      for (std::size_t k = 1; k < kHalves.size(); ++k)
        if (!fits(kind, kHalves[k])) break;
      break;
    }
  }
  return ways;
}

}  // namespace elbowroom
