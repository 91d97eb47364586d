#include "core/plan/snap_standing.h"

#include <algorithm>
#include <cmath>

#include "core/plan/snap_along.h"

namespace elbowroom::snap_parts {
namespace {

struct Axis {
  Direction dir, across;
  Length half, half_across;
};

struct Shift {
  Length by;
  SnapReason reason = SnapReason::none;
  std::optional<ElementId> other;
  std::optional<Point> guide_from;
};

struct Extent {
  Length low, high;
};

Extent extentOf(std::initializer_list<Point> points, Point center, Direction dir) {
  Extent extent{Length::nanometres(INT64_MAX), Length::nanometres(INT64_MIN)};
  for (const Point& p : points) {
    const Length at = dot(p - center, dir);
    extent = {std::min(extent.low, at), std::max(extent.high, at)};
  }
  return extent;
}

bool besides(const Extent& across, const Axis& axis) {
  return across.low < axis.half_across - kContact && across.high > kContact - axis.half_across;
}

Shift shiftAlong(const Layout& layout, const Fixture& moving, Point center, const Axis& axis,
                 const SnapRules& rules) {
  std::optional<Shift> best;
  const auto offer = [&](Shift shift) {
    if (abs(shift.by) <= rules.reach && (!best || abs(shift.by) < abs(best->by))) best = std::move(shift);
  };
  std::optional<Length> nearest_wall;
  for (const WallFrame& wall : layout.walls) {
    if (std::abs(wall.along.x * axis.dir.x + wall.along.y * axis.dir.y) > 1e-6) continue;
    if (!besides(extentOf({wall.from, wall.to}, center, axis.across), axis)) continue;
    const Length at = dot(wall.from - center, axis.dir);
    const bool ahead = wall.inward.x * axis.dir.x + wall.inward.y * axis.dir.y < 0;
    offer({ahead ? at - axis.half : at + axis.half, SnapReason::wall, wall.id, {}});
    if (!nearest_wall || abs(at) < abs(*nearest_wall)) nearest_wall = at;
  }
  std::vector<Shift> centres;
  for (const PlacedFixture& other : layout.fixtures) {
    if (other.fixture.id == moving.id || other.fixture.status == Status::remove) continue;
    const std::initializer_list<Point> corners = {other.left_side.a, other.left_side.b, other.right_side.a,
                                                  other.right_side.b};
    if (besides(extentOf(corners, center, axis.across), axis)) {
      const Extent extent = extentOf(corners, center, axis.dir);
      offer({extent.low - axis.half, SnapReason::neighbour, other.fixture.id, {}});
      offer({extent.high + axis.half, SnapReason::neighbour, other.fixture.id, {}});
    }
    centres.push_back(
        {dot(other.center - center, axis.dir), SnapReason::alignedCentre, other.fixture.id, other.center});
  }
  if (!best)
    for (Shift& centre : centres) offer(std::move(centre));
  if (best) return *best;
  // A tape is hooked at the nearer wall; without one the sheet's own grid serves.
  if (nearest_wall) return {*nearest_wall - roundTo(*nearest_wall, rules.step), SnapReason::step, {}, {}};
  const Length at = dot(center - Point{}, axis.dir);
  return {roundTo(at, rules.step) - at, SnapReason::step, {}, {}};
}

// Corners that stick out of the room pull the whole rectangle back to the wall.
Point keptInside(const Outline& room, Point center, const Axis& u, const Axis& v) {
  if (room.size() < 3) return center;
  for (int round = 0; round < 6; ++round) {
    Vector worst;
    for (const Length su : {-u.half, u.half}) {
      for (const Length sv : {-v.half, v.half}) {
        const Point corner = center + su * u.dir + sv * v.dir;
        if (contains(room, corner)) continue;
        Gap nearest;
        for (std::size_t i = 0; i < room.size(); ++i) {
          const Gap gap = gapBetween(Segment{corner, corner}, Segment{room[i], room[(i + 1) % room.size()]});
          if (i == 0 || gap.distance < nearest.distance) nearest = gap;
        }
        if (nearest.distance > length(worst)) worst = nearest.to - corner;
      }
    }
    if (length(worst) <= Length::nanometres(2)) break;
    center = center + worst;
  }
  return center;
}

}  // namespace

Snapped snapStanding(const Layout& layout, const Fixture& moving, Point wanted, const SnapRules& rules) {
  Angle turn;
  if (const auto* standing = std::get_if<Standing>(&moving.placement)) {
    turn = standing->turn;
  } else {
    const ElementId& wall = std::get<OnWall>(moving.placement).wall;
    for (const WallFrame& frame : layout.walls)
      if (frame.id == wall) turn = (frame.inward.angle() - Direction{0, -1}.angle()).normalised();
  }
  Snapped snapped;
  if (!rules.enabled) {
    snapped.placement = Standing{wanted, turn};
    return snapped;
  }
  const Direction facing = Direction{0, -1}.turned(turn);
  const Axis u{facing.left(), facing, moving.width / 2, moving.depth / 2};
  const Axis v{facing, facing.left(), moving.depth / 2, moving.width / 2};
  const Point start = keptInside(layout.room, wanted, u, v);
  const Shift along_u = shiftAlong(layout, moving, start, u, rules);
  const Point half_way = start + along_u.by * u.dir;
  const Shift along_v = shiftAlong(layout, moving, half_way, v, rules);
  const Point center = keptInside(layout.room, half_way + along_v.by * v.dir, u, v);
  snapped.placement = Standing{center, turn};
  const auto rank = [](SnapReason reason) {
    return reason == SnapReason::wall ? 3 : reason == SnapReason::neighbour ? 2
                                        : reason == SnapReason::alignedCentre ? 1 : 0;
  };
  const Shift& told = rank(along_v.reason) > rank(along_u.reason) ? along_v : along_u;
  snapped.reason = told.reason;
  snapped.other = told.other;
  if (told.guide_from) snapped.guide = Segment{*told.guide_from, center};
  if (along_u.reason == SnapReason::wall && along_v.reason == SnapReason::wall) snapped.reason = SnapReason::corner;
  return snapped;
}

}  // namespace elbowroom::snap_parts
