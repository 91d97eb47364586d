#include <algorithm>
#include <cmath>

#include "core/plan/snap_along.h"

namespace elbowroom {
namespace {

constexpr double kLean = 0.05;  // of the wall's length, about 3 degrees: straight enough to be meant straight

struct Ray {
  Direction dir;
  Length off;
  bool square = false;
};

std::optional<Ray> rayFor(const std::vector<Point>& so_far, Point wanted, const SnapRules& rules) {
  const Point last = so_far.back();
  const Vector v = wanted - last;
  const Length near = std::max(rules.reach, length(v).scaled(kLean));
  std::vector<Direction> bases{{1, 0}};
  if (so_far.size() >= 2) bases.push_back(Direction::between(so_far[so_far.size() - 2], last));
  std::optional<Ray> best;
  for (const Direction& base : bases) {
    for (int k = 0; k < 8; ++k) {
      Direction dir = base;
      for (int q = 0; q < k / 2; ++q) dir = dir.left();
      if (k % 2) dir = dir.turned(Angle::fromDegrees(45));
      const Length off = abs(dot(v, dir.left()));
      if (dot(v, dir) <= Length{} || off > near) continue;
      if (!best || off < best->off) best = Ray{dir, off, k % 2 == 0};
    }
  }
  return best;
}

// Along the ray to the height or the width of an earlier corner, where that is within reach.
std::optional<SnappedPoint> alignedOnRay(const std::vector<Point>& so_far, const Ray& ray, Length along,
                                         const SnapRules& rules) {
  const Point last = so_far.back();
  std::optional<SnappedPoint> best;
  Length least = rules.reach;
  for (std::size_t i = 0; i + 1 < so_far.size(); ++i) {
    for (const Direction& sheet : {Direction{1, 0}, Direction{0, 1}}) {
      const double slope = ray.dir.x * sheet.x + ray.dir.y * sheet.y;
      if (std::abs(slope) < 0.1) continue;
      const Length at = dot(so_far[i] - last, sheet).scaled(1 / slope);
      if (at <= Length{} || abs(at - along) > least) continue;
      least = abs(at - along);
      Point point = last + at * ray.dir;
      if (sheet.x == 1) point.x = so_far[i].x;
      else point.y = so_far[i].y;
      best = SnappedPoint{point, SnapReason::endPoint, Segment{so_far[i], point}};
    }
  }
  return best;
}

SnappedPoint freeCorner(const std::vector<Point>& so_far, Point wanted, const SnapRules& rules) {
  SnappedPoint snapped{{snap_parts::roundTo(wanted.x, rules.step), snap_parts::roundTo(wanted.y, rules.step)},
                       SnapReason::step, std::nullopt};
  Length least_x = rules.reach, least_y = rules.reach;
  for (const Point& p : so_far) {
    if (abs(p.x - wanted.x) <= least_x) {
      least_x = abs(p.x - wanted.x);
      snapped.point.x = p.x;
      snapped.reason = SnapReason::endPoint;
      snapped.guide = Segment{p, {}};
    }
    if (abs(p.y - wanted.y) <= least_y) {
      least_y = abs(p.y - wanted.y);
      snapped.point.y = p.y;
      snapped.reason = SnapReason::endPoint;
      snapped.guide = Segment{p, {}};
    }
  }
  if (snapped.guide) snapped.guide->b = snapped.point;
  return snapped;
}

}  // namespace

SnappedPoint snapCorner(const std::vector<Point>& so_far, Point wanted, const SnapRules& rules) {
  if (!rules.enabled) return {wanted, SnapReason::none, std::nullopt};
  if (so_far.size() >= 3 && distance(wanted, so_far.front()) <= rules.reach)
    return {so_far.front(), SnapReason::closing, std::nullopt};
  if (so_far.empty()) return freeCorner(so_far, wanted, rules);
  const Point last = so_far.back();
  if (const auto ray = rayFor(so_far, wanted, rules)) {
    const Length along = dot(wanted - last, ray->dir);
    if (const auto aligned = alignedOnRay(so_far, *ray, along, rules)) return *aligned;
    return {last + snap_parts::roundTo(along, rules.step) * ray->dir,
            ray->square ? SnapReason::rightAngle : SnapReason::halfAngle, std::nullopt};
  }
  const SnappedPoint aligned = freeCorner(so_far, wanted, rules);
  if (aligned.reason == SnapReason::endPoint) return aligned;
  const Length rounded = snap_parts::roundTo(distance(last, wanted), rules.step);
  return {last + rounded * Direction::between(last, wanted), SnapReason::step, std::nullopt};
}

}  // namespace elbowroom
