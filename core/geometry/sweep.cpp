#include "core/geometry/sweep.h"

#include "core/geometry/sector.h"

namespace elbowroom {
namespace {

using kernel::Interval;
using kernel::kForgiven;
using kernel::Sector;
using kernel::Vec;

struct First {
  double angle = HUGE_VAL;
  Vec at;
};

double angleOf(Vec p) { return std::max(0.0, std::atan2(p.y, p.x)); }

bool offer(First& first, Vec p) {
  // What still counts at the forgiven strip's edge reaches on to the closed leaf itself.
  const double angle = p.y <= kForgiven + 1e-9 && p.x > 0 ? 0.0 : angleOf(p);
  // Where the leaf comes to lie along an edge, the end far from the hinge is the place to show.
  constexpr double kSame = 1e-9;
  const bool farther = angle <= first.angle + kSame && kernel::norm(p) > kernel::norm(first.at);
  if (angle >= first.angle - kSame && !farther) return false;
  first = {angle, p};
  return true;
}

// The part of a solid next to the arc is forgiven only when nothing of it reaches deeper. Where it does, the
// tip meets it earlier: follow the boundary outwards from where it left the deeper disc, up to the full
// reach.
void followToArc(First& first, const std::vector<Vec>& ring, std::size_t edge, bool ahead, Vec at,
                 const Sector& sector) {
  const std::size_t n = ring.size();
  std::size_t next = ahead ? (edge + 1) % n : edge;
  for (std::size_t step = 0; step < n; ++step) {
    Vec to = ring[next];
    const Vec d = to - at;
    const bool leaves = kernel::norm(to) > sector.reach();
    if (leaves) {
      const double dd = kernel::dot(d, d), off = kernel::cross(d, at);
      const double half = std::sqrt(std::max(0.0, dd * sector.reach() * sector.reach() - off * off)) / dd;
      to = at + (half - kernel::dot(at, d) / dd) * d;
    }
    if (angleOf(to) >= first.angle) return;
    offer(first, to);
    if (leaves || kernel::norm(to) < sector.reach() - kForgiven) return;
    at = to;
    next = ahead ? (next + 1) % n : (next + n - 1) % n;
  }
}

// First angle at which the leaf meets the solid bounded by the outline (its outside when `room`).
First firstOf(const Outline& outline, const Sector& sector, bool room) {
  First first;
  if (outline.size() < 3 || sector.reach() <= 2 * kForgiven || sector.opening() <= 0) return first;
  const std::vector<Vec> ring = sector.local(outline);
  // Along an edge the angle runs one way, so the ends of its part inside decide.
  std::size_t edge = 0;
  bool ahead = false, at_arc = false;
  const double deep = sector.reach() - kForgiven - 1e-9;
  for (std::size_t i = 0; i < ring.size(); ++i) {
    const Vec a = ring[i], b = ring[(i + 1) % ring.size()];
    const Interval in = sector.within(a, b, kForgiven);
    if (in.empty()) continue;
    for (const double t : {in.from, in.to}) {
      const Vec p = a + t * (b - a);
      if (offer(first, p)) edge = i, ahead = t == in.to, at_arc = kernel::norm(p) >= deep;
    }
  }
  const Vec start = sector.firstAtDepth(kForgiven);
  if (sector.contains(start, kForgiven - 1e-9) &&
      contains(outline, kernel::toPoint(sector.world(start))) != room) {
    return {0, start};
  }
  if (at_arc) followToArc(first, ring, edge, ahead, first.at, sector);
  return first;
}

}  // namespace

std::optional<Touch> firstTouch(const Leaf& leaf, Length reach, const std::vector<Outline>& obstacles) {
  const Sector sector(leaf, reach);
  First best;
  int hit = -1;
  for (std::size_t i = 0; i < obstacles.size(); ++i) {
    const First first = firstOf(obstacles[i], sector, false);
    if (first.angle < best.angle) best = first, hit = static_cast<int>(i);
  }
  if (hit < 0) return std::nullopt;
  return Touch{Angle::fromRadians(best.angle), kernel::toPoint(sector.world(best.at)), hit};
}

std::optional<Touch> firstWallTouch(const Leaf& leaf, const Outline& room) {
  const Sector sector(leaf, leaf.width);
  const First first = firstOf(room, sector, true);
  if (first.angle == HUGE_VAL) return std::nullopt;
  return Touch{Angle::fromRadians(first.angle), kernel::toPoint(sector.world(first.at)), -1};
}

}  // namespace elbowroom
