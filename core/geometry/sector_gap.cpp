#include <array>

#include "core/geometry/sector.h"
#include "core/geometry/sweep.h"

namespace elbowroom {
namespace {

using kernel::Sector;
using kernel::Vec;

// A sector in plan coordinates, shrunk by `depth`, as constraints: inside the disc, left of two lines.
struct Cut {
  Vec at, inward;  // dot(p - at, inward) >= 0
};
struct Convex {
  Vec centre;
  double radius;
  std::array<Cut, 2> cuts;
};

Convex shrunk(const Sector& s, double depth) {
  const Vec hinge = s.world({});
  const Vec closed_in = s.world({0, 1}) - hinge, open_in = s.world(s.openInward()) - hinge;
  return {hinge,
          s.reach() - depth,
          {{{hinge + depth * closed_in, closed_in}, {hinge + depth * open_in, open_in}}}};
}

void lineLine(std::vector<Vec>& out, const Cut& a, const Cut& b) {
  const double det = kernel::cross(a.inward, b.inward);
  if (std::abs(det) < 1e-12) return;
  const double ka = kernel::dot(a.at, a.inward), kb = kernel::dot(b.at, b.inward);
  out.push_back({(ka * b.inward.y - kb * a.inward.y) / det, (kb * a.inward.x - ka * b.inward.x) / det});
}

void lineCircle(std::vector<Vec>& out, const Cut& cut, const Convex& disc) {
  const double off = kernel::dot(cut.at - disc.centre, cut.inward);
  const double under = disc.radius * disc.radius - off * off;
  if (under < 0) return;
  const Vec foot = disc.centre + off * cut.inward, along{-cut.inward.y, cut.inward.x};
  out.push_back(foot + std::sqrt(under) * along);
  out.push_back(foot - std::sqrt(under) * along);
}

void circleCircle(std::vector<Vec>& out, const Convex& a, const Convex& b) {
  const Vec d = b.centre - a.centre;
  const double n = kernel::norm(d);
  if (n < 1e-9) return;
  const double along = (n * n + a.radius * a.radius - b.radius * b.radius) / (2 * n);
  const double under = a.radius * a.radius - along * along;
  if (under < 0) return;
  const Vec u = (1 / n) * d, foot = a.centre + along * u;
  out.push_back(foot + std::sqrt(under) * Vec{-u.y, u.x});
  out.push_back(foot - std::sqrt(under) * Vec{-u.y, u.x});
}

// The lowest point of a bounded intersection of convex sets is the lowest point of one of them or a point
// where two boundaries cross; so if none of these lies in all of them, they share nothing.
std::optional<Vec> sharedPoint(const Convex& a, const Convex& b) {
  if (a.radius <= 0 || b.radius <= 0) return std::nullopt;
  const std::array<Cut, 4> cuts{a.cuts[0], a.cuts[1], b.cuts[0], b.cuts[1]};
  std::vector<Vec> candidates{a.centre - Vec{0, a.radius}, b.centre - Vec{0, b.radius}};
  circleCircle(candidates, a, b);
  for (std::size_t i = 0; i < cuts.size(); ++i) {
    lineCircle(candidates, cuts[i], a);
    lineCircle(candidates, cuts[i], b);
    for (std::size_t j = i + 1; j < cuts.size(); ++j) lineLine(candidates, cuts[i], cuts[j]);
  }
  constexpr double kRounding = 1e-8;
  const auto inAll = [&](Vec p) {
    for (const Convex* c : {&a, &b}) {
      if (kernel::norm(p - c->centre) > c->radius + kRounding) return false;
    }
    return std::all_of(cuts.begin(), cuts.end(),
                       [&](const Cut& cut) { return kernel::dot(p - cut.at, cut.inward) >= -kRounding; });
  };
  Vec sum;
  int count = 0;
  for (const Vec& p : candidates) {
    if (inAll(p)) sum = sum + p, ++count;
  }
  if (count == 0) return std::nullopt;
  return (1.0 / count) * sum;
}

}  // namespace

std::optional<Point> sectorsMeet(const Leaf& a, const Leaf& b) {
  const Sector first(a, a.width), second(b, b.width);
  if (first.opening() <= 0 || second.opening() <= 0) return std::nullopt;
  auto place = sharedPoint(shrunk(first, kernel::kForgiven), shrunk(second, 0));
  if (!place) place = sharedPoint(shrunk(first, 0), shrunk(second, kernel::kForgiven));
  if (!place) return std::nullopt;
  return kernel::toPoint(*place);
}

Gap gapToSector(const Leaf& leaf, const Outline& solid) {
  if (solid.empty()) return {};
  const Sector sector(leaf, leaf.width);
  const std::vector<Vec> ring = sector.local(solid);
  const auto shared = [&](Vec p, bool overlap) {
    const Point at = kernel::toPoint(sector.world(p));
    return Gap{Length{}, at, at, overlap};
  };
  std::optional<Vec> touch;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec edge = ring[i] - ring[j];
    const kernel::Interval deep = sector.within(ring[j], ring[i], kernel::kForgiven);
    if (!deep.empty()) return shared(ring[j] + (deep.from + deep.to) / 2 * edge, true);
    const kernel::Interval in = sector.within(ring[j], ring[i], 0);
    if (!in.empty() && !touch) touch = ring[j] + (in.from + in.to) / 2 * edge;
  }
  const Vec start = sector.firstAtDepth(kernel::kForgiven);
  if (sector.contains(start, kernel::kForgiven - 1e-9) &&
      contains(solid, kernel::toPoint(sector.world(start)))) {
    return shared(start, true);
  }
  if (!touch && contains(solid, leaf.hinge)) touch = Vec{};
  if (touch) return shared(*touch, false);

  double best = HUGE_VAL;
  Vec from, to;
  const auto offer = [&](Vec on_sector, Vec on_solid) {
    const double d = kernel::norm(on_solid - on_sector);
    if (d < best) best = d, from = on_sector, to = on_solid;
  };
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec a = ring[j], b = ring[i];
    for (const Vec& p : {a, kernel::nearestOnSegment({}, a, b)}) offer(sector.nearestTo(p), p);
    for (const Vec& corner : {Vec{}, sector.closedTip(), sector.openTip()}) {
      offer(corner, kernel::nearestOnSegment(corner, a, b));
    }
  }
  return {Length::fromInches(best), kernel::toPoint(sector.world(from)), kernel::toPoint(sector.world(to)),
          false};
}

Area sectorArea(const Leaf& leaf) {
  return (leaf.width * leaf.width).scaled(std::abs(leaf.sweep.radians()) / 2);
}

Outline sectorOutline(const Leaf& leaf, int steps) {
  Outline out = arcPoints(leaf.hinge, leaf.width, leaf.closed, leaf.sweep, steps);
  out.insert(out.begin(), leaf.hinge);
  return out;
}

}  // namespace elbowroom
