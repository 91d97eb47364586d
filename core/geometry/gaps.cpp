#include <optional>

#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"
#include "core/geometry/range.h"

namespace elbowroom {
namespace {

using kernel::Range;
using kernel::rangeOf;
using kernel::squareBetween;
using kernel::squareTo;
using kernel::Vec;

// Rounding of a nanometre grid must not make a contact of exactly kContact an overlap.
const double kForgiven = kContact.inches() + 1e-7;

struct Nearest {
  double square = HUGE_VAL;
  Vec from, to;
  void offer(Vec a, Vec b) {
    const double s = kernel::dot(b - a, b - a);
    if (s < square) square = s, from = a, to = b;
  }
  Gap gap() const {
    return {Length::fromInches(std::sqrt(square)), kernel::toPoint(from), kernel::toPoint(to), false};
  }
};

// No less than the distance, squared: from the vertex that is nearest to the other's box.
double squareAtMost(const std::vector<Vec>& points, const std::vector<Vec>& ring, const Range& around_ring) {
  Vec from;
  double least = HUGE_VAL;
  for (const Vec& p : points)
    if (const double s = squareTo(p, around_ring); s < least) least = s, from = p;
  double square = HUGE_VAL;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec off = kernel::nearestOnSegment(from, ring[j], ring[i]) - from;
    square = std::min(square, kernel::dot(off, off));
  }
  return square;
}

// Nearest of the vertices of `points` to the edges of `ring`; `flipped` when `ring` is the first of the pair.
// What lies farther than the root of `most` from the other's box is left out.
void offerVertices(Nearest& best, const std::vector<Vec>& points, const std::vector<Vec>& ring,
                   const Range& around_points, const Range& around_ring, double most, bool flipped) {
  thread_local std::vector<Vec> near;
  near.clear();
  for (const Vec& p : points)
    if (squareTo(p, around_ring) <= most) near.push_back(p);
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec a = ring[j], b = ring[i];
    Range edge{a, a};
    edge.take(b);
    if (squareBetween(edge, around_points) > most) continue;
    for (const Vec& p : near) {
      const Vec q = kernel::nearestOnSegment(p, a, b);
      flipped ? best.offer(q, p) : best.offer(p, q);
    }
  }
}

std::optional<Point> boundariesTouch(const Outline& a, const Outline& b) {
  for (std::size_t i = 0, j = a.size() - 1; i < a.size(); j = i++) {
    for (std::size_t k = 0, l = b.size() - 1; k < b.size(); l = k++) {
      if (kernel::segmentsTouch(a[j], a[i], b[l], b[k])) return kernel::sharedPoint(a[j], a[i], b[l], b[k]);
    }
  }
  return std::nullopt;
}

Box boxOf(Point a, Point b) {
  return {{std::min(a.x, b.x), std::min(a.y, b.y)}, {std::max(a.x, b.x), std::max(a.y, b.y)}};
}

// A point of the boundary of `line` that lies inside (or outside) `ring` deeper than contact.
std::optional<Point> deepOn(const Outline& line, const Outline& ring, bool inside) {
  std::vector<Vec> edges;
  // What is deep inside is deep in the box, which most edges of what stands flush are not.
  const Box box = grown(boundsOf(ring), -kContact);
  for (std::size_t i = 0, j = line.size() - 1; i < line.size(); j = i++) {
    if (inside && !touch(boxOf(line[j], line[i]), box)) continue;
    if (edges.empty()) edges = kernel::toInches(ring);
    const Vec a = kernel::toInches(line[j]), b = kernel::toInches(line[i]);
    for (const kernel::Interval& far : kernel::farStretches(a, b, edges, kForgiven)) {
      const Point middle = kernel::toPoint(a + (far.from + far.to) / 2 * (b - a));
      if (contains(ring, middle) == inside) return middle;
    }
  }
  return std::nullopt;
}

// For outlines that coincide within contact, where no boundary is deep in the other: a point well inside `a`
// decides. Every part of `a` wider than contact lies behind some edge.
std::optional<Point> deepBehindEdges(const Outline& a, const Outline& b) {
  const std::vector<Vec> ring_a = kernel::toInches(a), ring_b = kernel::toInches(b);
  const auto deep = [](Vec p, const Outline& outline, const std::vector<Vec>& ring) {
    return contains(outline, kernel::toPoint(p)) && !kernel::farStretches(p, p, ring, kForgiven).empty();
  };
  for (std::size_t i = 0, j = a.size() - 1; i < a.size(); j = i++) {
    const Vec edge = ring_a[i] - ring_a[j], middle = 0.5 * (ring_a[i] + ring_a[j]);
    const double n = kernel::norm(edge);
    if (n == 0) continue;
    for (const double step : {1.5 * kForgiven, -1.5 * kForgiven}) {
      const Vec p = middle + (step / n) * Vec{-edge.y, edge.x};
      if (deep(p, a, ring_a) && deep(p, b, ring_b)) return kernel::toPoint(p);
    }
  }
  return std::nullopt;
}

bool boxesShareDepth(const Box& a, const Box& b) {
  return std::min(a.high.x, b.high.x) - std::max(a.low.x, b.low.x) > kContact &&
         std::min(a.high.y, b.high.y) - std::max(a.low.y, b.low.y) > kContact;
}

// No wall comes near the box.
bool standsFree(const Box& box, const Outline& room) {
  for (std::size_t i = 0, j = room.size() - 1; i < room.size(); j = i++) {
    const Point a = room[j], b = room[i];
    if (std::max(a.x, b.x) >= box.low.x - kContact && std::min(a.x, b.x) <= box.high.x + kContact &&
        std::max(a.y, b.y) >= box.low.y - kContact && std::min(a.y, b.y) <= box.high.y + kContact)
      return false;
  }
  return true;
}

Gap together(Point p, bool overlap) { return {Length{}, p, p, overlap}; }

Gap nearestOfBoundaries(const Outline& a, const Outline& b) {
  const std::vector<Vec> ring_a = kernel::toInches(a), ring_b = kernel::toInches(b);
  const Range range_a = rangeOf(ring_a), range_b = rangeOf(ring_b);
  // Rounding must not leave out what decides.
  const double most = squareAtMost(ring_a, ring_b, range_b) * (1 + 1e-9) + 1e-12;
  Nearest best;
  offerVertices(best, ring_a, ring_b, range_a, range_b, most, false);
  offerVertices(best, ring_b, ring_a, range_b, range_a, most, true);
  return best.gap();
}

}  // namespace

Gap gapBetween(const Outline& a, const Outline& b) {
  if (a.empty() || b.empty()) return {};
  const Box box_a = boundsOf(a), box_b = boundsOf(b);
  if (touch(box_a, box_b)) {
    if (boxesShareDepth(box_a, box_b)) {
      auto deep = deepOn(a, b, true);
      if (!deep) deep = deepOn(b, a, true);
      if (!deep) deep = deepBehindEdges(a, b);
      if (deep) return together(*deep, true);
    }
    if (const auto touch = boundariesTouch(a, b)) return together(*touch, false);
    if (contains(b, a.front())) return together(a.front(), false);
    if (contains(a, b.front())) return together(b.front(), false);
  }
  return nearestOfBoundaries(a, b);
}

std::optional<Point> overlapOf(const Outline& a, const Outline& b) {
  if (a.empty() || b.empty() || !boxesShareDepth(boundsOf(a), boundsOf(b))) return std::nullopt;
  const Gap gap = gapBetween(a, b);
  return gap.overlap ? std::optional(gap.from) : std::nullopt;
}

Gap gapToBoundary(const Outline& thing, const Outline& room) {
  if (thing.empty() || room.empty()) return {};
  if (standsFree(boundsOf(thing), room) && contains(room, thing.front()))
    return nearestOfBoundaries(thing, room);
  auto outside = deepOn(thing, room, false);
  if (!outside) outside = deepOn(room, thing, true);
  if (outside) return together(*outside, true);
  if (const auto touch = boundariesTouch(thing, room)) return together(*touch, false);
  return nearestOfBoundaries(thing, room);
}

Gap gapFromPoint(Point p, const Outline& solid) {
  if (solid.empty()) return {};
  const std::vector<Vec> ring = kernel::toInches(solid);
  Nearest best;
  const Vec from = kernel::toInches(p);
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++)
    best.offer(from, kernel::nearestOnSegment(from, ring[j], ring[i]));
  if (!contains(solid, p)) return best.gap();
  return together(p, best.square > kForgiven * kForgiven);
}

Gap gapBetween(Segment a, Segment b) {
  if (kernel::segmentsTouch(a.a, a.b, b.a, b.b)) {
    return together(kernel::sharedPoint(a.a, a.b, b.a, b.b), false);
  }
  const Vec p = kernel::toInches(a.a), q = kernel::toInches(a.b);
  const Vec r = kernel::toInches(b.a), s = kernel::toInches(b.b);
  Nearest best;
  best.offer(p, kernel::nearestOnSegment(p, r, s));
  best.offer(q, kernel::nearestOnSegment(q, r, s));
  best.offer(kernel::nearestOnSegment(r, p, q), r);
  best.offer(kernel::nearestOnSegment(s, p, q), s);
  return best.gap();
}

}  // namespace elbowroom
