// Private to core/geometry: exact predicates on whole nanometres, and nearest points and stretches of
// segments.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/geometry/vec.h"

namespace elbowroom::kernel {

inline Vec nearestOnSegment(Vec p, Vec a, Vec b) {
  const Vec d = b - a;
  const double n = dot(d, d);
  const double t = n > 0 ? std::clamp(dot(p - a, d) / n, 0.0, 1.0) : 0.0;
  return a + t * d;
}

// Sign of the turn a -> b -> c: +1 left, -1 right, 0 straight. Exact.
inline int side(Point a, Point b, Point c) {
  const __int128 left = static_cast<__int128>((b.x - a.x).nm()) * (c.y - a.y).nm();
  const __int128 right = static_cast<__int128>((b.y - a.y).nm()) * (c.x - a.x).nm();
  return left > right ? 1 : left < right ? -1 : 0;
}
inline bool withinBox(Point a, Point b, Point p) {
  return std::min(a.x, b.x) <= p.x && p.x <= std::max(a.x, b.x) && std::min(a.y, b.y) <= p.y &&
         p.y <= std::max(a.y, b.y);
}
inline bool onSegment(Point a, Point b, Point p) { return withinBox(a, b, p) && side(a, b, p) == 0; }
// Do the closed segments share a point? Exact.
inline bool segmentsTouch(Point a, Point b, Point c, Point d) {
  if (std::max(a.x, b.x) < std::min(c.x, d.x) || std::max(c.x, d.x) < std::min(a.x, b.x) ||
      std::max(a.y, b.y) < std::min(c.y, d.y) || std::max(c.y, d.y) < std::min(a.y, b.y)) {
    return false;
  }
  const int c_side = side(a, b, c), d_side = side(a, b, d), a_side = side(c, d, a), b_side = side(c, d, b);
  return c_side * d_side <= 0 && a_side * b_side <= 0;
}
// A point the two segments share; precondition: segmentsTouch.
inline Point sharedPoint(Point a, Point b, Point c, Point d) {
  for (const Point& p : {c, d}) {
    if (onSegment(a, b, p)) return p;
  }
  for (const Point& p : {a, b}) {
    if (onSegment(c, d, p)) return p;
  }
  const Vec p = toInches(a), r = toInches(b) - p, q = toInches(c), s = toInches(d) - q;
  return toPoint(p + (cross(q - p, s) / cross(r, s)) * r);
}

struct Interval {
  double from = 0, to = -1;
  bool empty() const { return from > to; }
};
// Where along a..b (0 to 1) the distance to the segment c..d is at most r: one interval, since the set of
// points within r of a segment is convex.
Interval withinReach(Vec a, Vec b, Vec c, Vec d, double r);
// The stretches of a..b (0 to 1) that keep farther than r from every edge of the ring.
// Valid until the next call on the same thread.
const std::vector<Interval>& farStretches(Vec a, Vec b, const std::vector<Vec>& ring, double r);

}  // namespace elbowroom::kernel
