#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/plan/snap_along.h"
#include "core/plan/snap_standing.h"

namespace elbowroom {
namespace {

using snap_parts::AlongAnswer;
using snap_parts::AlongProblem;
using snap_parts::Span;

bool parallel(Direction a, Direction b) { return std::abs(a.x * b.y - a.y * b.x) < 1e-6; }

// The stretch of wall beside which the polyline stands nearer than `depth`, in the wall's own figures.
std::optional<Span> besideWall(const WallFrame& wall, const Outline& ring, bool closed, Length depth) {
  std::optional<Span> span;
  const Length low = kContact, high = depth - kContact;
  const auto add = [&](Length s) {
    if (!span) span = Span{s, s, {}};
    span->low = std::min(span->low, s);
    span->high = std::max(span->high, s);
  };
  for (std::size_t i = 0; i + (closed ? 0 : 1) < ring.size(); ++i) {
    const Vector a = ring[i] - wall.from, b = ring[(i + 1) % ring.size()] - wall.from;
    const Length sa = dot(a, wall.along), sb = dot(b, wall.along);
    const Length ha = dot(a, wall.inward), hb = dot(b, wall.inward);
    if (ha > low && ha < high) add(sa);
    if (hb > low && hb < high) add(sb);
    for (const Length h : {low, high})
      if ((ha < h) != (hb < h)) add(sa + (sb - sa).scaled((h - ha) / (hb - ha)));
  }
  return span;
}

AlongProblem problemOn(const Layout& layout, std::size_t index, const Fixture& moving, Length gap) {
  const WallFrame& wall = layout.walls[index];
  AlongProblem problem;
  problem.wall_length = wall.length;
  problem.half = moving.width / 2;
  const Length depth = moving.depth + gap;
  for (std::size_t j = 0; j < layout.walls.size(); ++j) {
    if (j == index) continue;
    if (auto span = besideWall(wall, {layout.walls[j].from, layout.walls[j].to}, false, depth))
      problem.blocked.push_back(*span);
  }
  problem.centres.push_back({wall.length / 2, SnapReason::wallCentre, wall.id, {}});
  for (const PlacedFixture& other : layout.fixtures) {
    if (other.fixture.id == moving.id || other.fixture.status == Status::remove) continue;
    if (auto span = besideWall(wall, other.footprint, true, depth)) {
      span->id = other.fixture.id;
      problem.neighbours.push_back(*span);
    }
    if (parallel(other.facing, wall.inward))
      problem.centres.push_back({dot(other.center - wall.from, wall.along), SnapReason::alignedCentre,
                                 other.fixture.id, other.center});
  }
  for (const PlacedOpening& opening : layout.openings) {
    if (opening.wall < 0 || !parallel(layout.walls[static_cast<std::size_t>(opening.wall)].along, wall.along))
      continue;
    const Point middle = midpoint(opening.left, opening.right);
    problem.centres.push_back(
        {dot(middle - wall.from, wall.along), SnapReason::alignedCentre, opening.opening.id, middle});
  }
  return problem;
}

struct Landing {
  std::size_t wall;
  AlongProblem problem;
  Length wanted;
  Length off;     // how far the cursor is from any place against this wall
  Length height;  // of the cursor over the wall
};

std::optional<Landing> bestWall(const Layout& layout, const Fixture& moving, Point wanted, Length gap,
                                const SnapRules& rules) {
  const bool inside = contains(layout.room, wanted);
  const Length near = std::max(moving.depth, moving.depth / 2 + rules.reach) + gap;
  const auto* present = std::get_if<OnWall>(&moving.placement);
  std::optional<Landing> best;
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    const WallFrame& wall = layout.walls[i];
    if (inside && (dot(wanted - wall.from, wall.inward) < -kContact ||
                   gapBetween(Segment{wanted, wanted}, Segment{wall.from, wall.to}).distance > near))
      continue;
    AlongProblem problem = problemOn(layout, i, moving, gap);
    const Length s = dot(wanted - wall.from, wall.along);
    const std::optional<Length> along = snap_parts::nearestAllowed(problem, s);
    if (!along) continue;
    // Who points nearer to a wall than half the depth means that wall: the centre of the thing cannot follow there, so
    // what it lacks is no distance. At the end of a wall the next one would win by it.
    const Length height = dot(wanted - wall.from, wall.inward), middle = gap + moving.depth / 2;
    const Length beyond = height < Length{} ? -height : std::max(Length{}, height - middle);
    Landing landing{i, std::move(problem), s, distance(Point{}, Point{beyond, abs(*along - s)}), abs(height)};
    // In a corner the present wall keeps its fixture until the next one is clearly nearer.
    if (present && present->wall == wall.id) landing.off -= std::max(rules.reach, moving.depth / 2);
    if (!best || landing.off < best->off || (landing.off == best->off && landing.height < best->height))
      best = std::move(landing);
  }
  return best;
}

}  // namespace

Snapped snapFixture(const Layout& layout, const Fixture& moving, Point wanted, const SnapRules& rules) {
  const auto* present = std::get_if<OnWall>(&moving.placement);
  const Length gap = present ? present->gap : Length{};
  if (present || infoOf(moving.kind).wants_wall) {
    if (const auto landing = bestWall(layout, moving, wanted, gap, rules)) {
      const WallFrame& wall = layout.walls[landing->wall];
      if (const auto answer = snap_parts::settle(landing->problem, landing->wanted, rules)) {
        Snapped snapped;
        snapped.placement = OnWall{wall.id, answer->along, gap};
        snapped.other = answer->other ? answer->other : std::optional(wall.id);
        const bool plain = answer->reason == SnapReason::step || answer->reason == SnapReason::none;
        snapped.reason = plain ? SnapReason::wall : answer->reason;
        if (answer->guide_from) {
          const Point center = wall.at(answer->along) + (gap + moving.depth / 2) * wall.inward;
          snapped.guide = Segment{*answer->guide_from, center};
        }
        return snapped;
      }
    }
  }
  return snap_parts::snapStanding(layout, moving, wanted, rules);
}

}  // namespace elbowroom
