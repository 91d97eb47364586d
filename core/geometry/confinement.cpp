#include "core/geometry/confinement.h"

#include <algorithm>
#include <utility>
#include <vector>

#include "core/geometry/kernel.h"

namespace elbowroom {
namespace {

using kernel::Vec;

constexpr double kEps = 1e-7;

// A stretch of something beside a flank: its gap runs straight from gap_a at y_a to gap_b at y_b (y
// outwards).
struct Beside {
  double y_a, y_b, gap_a, gap_b;
  double gapAt(double y) const {
    return y_b > y_a ? gap_a + (gap_b - gap_a) * (y - y_a) / (y_b - y_a) : std::min(gap_a, gap_b);
  }
};

// Narrows from..to (0 to 1) to where a value that runs straight from at_a to at_b is not negative.
void keep(double at_a, double at_b, double& from, double& to) {
  if (at_a < 0 && at_b < 0) {
    from = 1, to = 0;
    return;
  }
  if (at_a < 0) from = std::max(from, at_a / (at_a - at_b));
  if (at_b < 0) to = std::min(to, at_a / (at_a - at_b));
}

// How far out the edge first stands across the space itself; `p` in (across, y).
double acrossAt(Vec a, Vec b, double half) {
  double from = 0, to = 1;
  keep(a.x + half, b.x + half, from, to);
  keep(half - a.x, half - b.x, from, to);
  keep(a.y - kContact.inches(), b.y - kContact.inches(), from, to);
  if (from > to) return HUGE_VAL;
  return std::min(a.y + from * (b.y - a.y), a.y + to * (b.y - a.y));
}

// The part of the edge with low <= y <= high and 0 <= gap < most; `p` in (gap, y).
void addBeside(std::vector<Beside>& out, Vec a, Vec b, double high, double most) {
  // An edge square to the flank only closes off others.
  if (std::abs(b.y - a.y) < kEps) return;
  double from = 0, to = 1;
  // A hair off the back, so that the thing at the back and walls behind it do not count.
  keep(a.y - kContact.inches(), b.y - kContact.inches(), from, to);
  keep(high - a.y, high - b.y, from, to);
  keep(a.x + kContact.inches(), b.x + kContact.inches(), from, to);
  keep(most - kEps - a.x, most - kEps - b.x, from, to);
  if (from > to) return;
  Vec p = a + from * (b - a), q = a + to * (b - a);
  if (p.y > q.y) std::swap(p, q);
  out.push_back({p.y, q.y, std::max(0.0, p.x), std::max(0.0, q.x)});
}

Flank flankOf(const std::vector<Beside>& things, double room_needed) {
  double gap = room_needed, depth = 0;
  for (const Beside& b : things) {
    gap = std::min({gap, b.gap_a, b.gap_b});
    depth = std::max(depth, b.y_b);
  }
  return {Length::fromInches(gap), Length::fromInches(depth)};
}

}  // namespace

Confinement confinementOf(const FreeFloor& floor, const ApproachSpace& space, Length room_needed,
                          Length look) {
  const Vec origin = kernel::toInches(space.back_center);
  const double n = std::hypot(space.outward.x, space.outward.y);
  const Vec out = n > 0 ? Vec{space.outward.x / n, space.outward.y / n} : Vec{1, 0};
  const Vec left{-out.y, out.x};  // of somebody who stands at the fixture and looks out
  const double half = space.width.inches() / 2, most = room_needed.inches();
  struct Local {
    Vec a, b;
  };
  std::vector<Local> edges;
  double high = look.inches();
  const auto addRing = [&](const Outline& ring) {
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      const Vec a = kernel::toInches(ring[j]) - origin, b = kernel::toInches(ring[i]) - origin;
      edges.push_back(
          {{kernel::dot(a, left), kernel::dot(a, out)}, {kernel::dot(b, left), kernel::dot(b, out)}});
      high = std::min(high, acrossAt(edges.back().a, edges.back().b, half - 2 * kContact.inches()));
    }
  };
  addRing(floor.room());
  for (const Outline& o : floor.obstacles()) addRing(o);
  std::vector<Beside> lefts, rights;
  for (const Local& e : edges) {
    addBeside(lefts, {e.a.x - half, e.a.y}, {e.b.x - half, e.b.y}, high, most);
    addBeside(rights, {-e.a.x - half, e.a.y}, {-e.b.x - half, e.b.y}, high, most);
  }

  Confinement c;
  c.left = flankOf(lefts, most);
  c.right = flankOf(rights, most);
  // The farthest place where a left and a right thing together leave too little.
  double depth = 0, room = most;
  for (const Beside& l : lefts)
    for (const Beside& r : rights) {
      const double from = std::max(l.y_a, r.y_a), to = std::min(l.y_b, r.y_b);
      if (from > to) continue;
      const double at_from = l.gapAt(from) + r.gapAt(from), at_to = l.gapAt(to) + r.gapAt(to);
      if (at_from >= most - kEps && at_to >= most - kEps) continue;
      const double far = at_to < most - kEps ? to : from + (to - from) * (most - at_from) / (at_to - at_from);
      depth = std::max(depth, far);
      room = std::min({room, at_from, at_to});
    }
  c.depth = Length::fromInches(depth);
  c.width = space.width + Length::fromInches(room);
  return c;
}

}  // namespace elbowroom
