#include <optional>

#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

using kernel::P;

// Rounding of a nanometre grid must not make a contact of exactly kContact an overlap.
const double kForgiven = kContact.inches() + 1e-7;

struct Nearest {
  double square = HUGE_VAL;
  P from, to;
  void offer(P a, P b) {
    const double s = kernel::dot(b - a, b - a);
    if (s < square) square = s, from = a, to = b;
  }
  Gap gap() const {
    return {Length::fromInches(std::sqrt(square)), kernel::toPoint(from), kernel::toPoint(to), false};
  }
};

// Nearest of the vertices of `points` to the edges of `ring`; `flipped` when `ring` is the first of the pair.
void offerVertices(Nearest& best, const std::vector<P>& points, const std::vector<P>& ring, bool flipped) {
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const P a = ring[j], b = ring[i];
    for (const P& p : points) {
      const P q = kernel::nearestOnSegment(p, a, b);
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

// A point of the boundary of `line` that lies inside (or outside) `ring` deeper than contact.
std::optional<Point> deepOn(const Outline& line, const Outline& ring, bool inside) {
  const std::vector<P> edges = kernel::inInches(ring);
  for (std::size_t i = 0, j = line.size() - 1; i < line.size(); j = i++) {
    const P a = kernel::inInches(line[j]), b = kernel::inInches(line[i]);
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
  const std::vector<P> ring_a = kernel::inInches(a), ring_b = kernel::inInches(b);
  const auto deep = [](P p, const Outline& outline, const std::vector<P>& ring) {
    return contains(outline, kernel::toPoint(p)) && !kernel::farStretches(p, p, ring, kForgiven).empty();
  };
  for (std::size_t i = 0, j = a.size() - 1; i < a.size(); j = i++) {
    const P edge = ring_a[i] - ring_a[j], middle = 0.5 * (ring_a[i] + ring_a[j]);
    const double n = kernel::norm(edge);
    if (n == 0) continue;
    for (const double step : {1.5 * kForgiven, -1.5 * kForgiven}) {
      const P p = middle + (step / n) * P{-edge.y, edge.x};
      if (deep(p, a, ring_a) && deep(p, b, ring_b)) return kernel::toPoint(p);
    }
  }
  return std::nullopt;
}

bool boxesShareDepth(const Box& a, const Box& b) {
  return std::min(a.high.x, b.high.x) - std::max(a.low.x, b.low.x) > kContact &&
         std::min(a.high.y, b.high.y) - std::max(a.low.y, b.low.y) > kContact;
}
bool boxesTouch(const Box& a, const Box& b) {
  return a.low.x <= b.high.x && b.low.x <= a.high.x && a.low.y <= b.high.y && b.low.y <= a.high.y;
}

Gap together(Point p, bool overlap) { return {Length{}, p, p, overlap}; }

Gap nearestOfBoundaries(const Outline& a, const Outline& b) {
  const std::vector<P> ring_a = kernel::inInches(a), ring_b = kernel::inInches(b);
  Nearest best;
  offerVertices(best, ring_a, ring_b, false);
  offerVertices(best, ring_b, ring_a, true);
  return best.gap();
}

}  // namespace

Gap gapBetween(const Outline& a, const Outline& b) {
  if (a.empty() || b.empty()) return {};
  const Box box_a = boundsOf(a), box_b = boundsOf(b);
  if (boxesTouch(box_a, box_b)) {
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

Gap gapToBoundary(const Outline& thing, const Outline& room) {
  if (thing.empty() || room.empty()) return {};
  auto outside = deepOn(thing, room, false);
  if (!outside) outside = deepOn(room, thing, true);
  if (outside) return together(*outside, true);
  if (const auto touch = boundariesTouch(thing, room)) return together(*touch, false);
  return nearestOfBoundaries(thing, room);
}

Gap gapFromPoint(Point p, const Outline& solid) {
  if (solid.empty()) return {};
  const std::vector<P> ring = kernel::inInches(solid);
  Nearest best;
  offerVertices(best, {kernel::inInches(p)}, ring, false);
  if (!contains(solid, p)) return best.gap();
  return together(p, best.square > kForgiven * kForgiven);
}

Gap gapBetween(Segment a, Segment b) {
  if (kernel::segmentsTouch(a.a, a.b, b.a, b.b)) {
    return together(kernel::sharedPoint(a.a, a.b, b.a, b.b), false);
  }
  const P p = kernel::inInches(a.a), q = kernel::inInches(a.b);
  const P r = kernel::inInches(b.a), s = kernel::inInches(b.b);
  Nearest best;
  best.offer(p, kernel::nearestOnSegment(p, r, s));
  best.offer(q, kernel::nearestOnSegment(q, r, s));
  best.offer(kernel::nearestOnSegment(r, p, q), r);
  best.offer(kernel::nearestOnSegment(s, p, q), s);
  return best.gap();
}

}  // namespace elbowroom
