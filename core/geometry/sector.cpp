#include "core/geometry/sector.h"

namespace elbowroom::kernel {
namespace {

// Keeps the part of `in` where a value that runs straight from at_a to at_b stays at or above `least`.
void keepAbove(Interval& in, double at_a, double at_b, double least) {
  if (at_a < least && at_b < least) in = {};
  if (at_a < least && at_b >= least) in.from = std::max(in.from, (least - at_a) / (at_b - at_a));
  if (at_b < least && at_a >= least) in.to = std::min(in.to, (least - at_a) / (at_b - at_a));
}

void keepInDisc(Interval& in, Vec a, Vec b, double radius) {
  const Vec d = b - a;
  const double n = dot(d, d), off = cross(d, a);
  if (n == 0) {
    if (dot(a, a) > radius * radius) in = {};
    return;
  }
  const double under = n * radius * radius - off * off;
  if (under < 0) {
    in = {};
    return;
  }
  const double half = std::sqrt(under) / n, middle = -dot(a, d) / n;
  in.from = std::max(in.from, middle - half);
  in.to = std::min(in.to, middle + half);
}

}  // namespace

Sector::Sector(const Leaf& leaf, Length reach)
    : origin_(toInches(leaf.hinge)),
      reach_(std::max(0.0, reach.inches())),
      opening_(std::min(std::abs(leaf.sweep.radians()), std::numbers::pi)) {
  const double n = std::hypot(leaf.closed.x, leaf.closed.y);
  along_ = n > 0 ? Vec{leaf.closed.x / n, leaf.closed.y / n} : Vec{1, 0};
  open_ = {std::cos(opening_), std::sin(opening_)};
  aside_ = leaf.sweep < Angle{} ? Vec{along_.y, -along_.x} : Vec{-along_.y, along_.x};
}

Vec Sector::local(Point p) const {
  const Vec d = toInches(p) - origin_;
  return {dot(d, along_), dot(d, aside_)};
}

Vec Sector::world(Vec q) const { return origin_ + q.x * along_ + q.y * aside_; }

std::vector<Vec> Sector::local(const Outline& ring) const {
  std::vector<Vec> out;
  out.reserve(ring.size());
  for (const Point& p : ring) out.push_back(local(p));
  return out;
}

Interval Sector::within(Vec a, Vec b, double depth) const {
  Interval in{0, 1};
  if (depth >= reach_) return {};
  keepAbove(in, a.y, b.y, depth);
  if (in.empty()) return in;
  keepAbove(in, dot(a, openInward()), dot(b, openInward()), depth);
  if (in.empty()) return in;
  keepInDisc(in, a, b, reach_ - depth);
  return in;
}

Vec Sector::firstAtDepth(double depth) const {
  const double r = reach_ - depth;
  return {std::sqrt(std::max(0.0, r * r - depth * depth)), depth};
}

bool Sector::contains(Vec p, double depth) const {
  return depth < reach_ && p.y >= depth && dot(p, openInward()) >= depth && norm(p) <= reach_ - depth;
}

Vec Sector::nearestTo(Vec p) const {
  if (contains(p, 0)) return p;
  // In the wedge beyond the arc.
  if (p.y >= 0 && dot(p, openInward()) >= 0 && norm(p) > 0) return (reach_ / norm(p)) * p;
  const Vec closed = nearestOnSegment(p, {}, closedTip()), open = nearestOnSegment(p, {}, openTip());
  return norm(p - closed) <= norm(p - open) ? closed : open;
}

}  // namespace elbowroom::kernel
