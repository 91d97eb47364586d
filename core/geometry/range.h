// Private to core/geometry: the smallest upright rectangle round points in inches, and how far such
// rectangles are apart.
#pragma once

#include <algorithm>
#include <cmath>
#include <vector>

#include "core/geometry/vec.h"

namespace elbowroom::kernel {

struct Range {
  Vec low{HUGE_VAL, HUGE_VAL}, high{-HUGE_VAL, -HUGE_VAL};
  void take(Vec p) {
    low = {std::min(low.x, p.x), std::min(low.y, p.y)};
    high = {std::max(high.x, p.x), std::max(high.y, p.y)};
  }
};
inline Range rangeOf(const std::vector<Vec>& points) {
  Range range;
  for (const Vec& p : points) range.take(p);
  return range;
}
// Squared; 0 when they touch.
inline double squareBetween(const Range& a, const Range& b) {
  const Vec off{std::max({0.0, a.low.x - b.high.x, b.low.x - a.high.x}),
                std::max({0.0, a.low.y - b.high.y, b.low.y - a.high.y})};
  return dot(off, off);
}
inline double squareTo(Vec p, const Range& range) { return squareBetween({p, p}, range); }

}  // namespace elbowroom::kernel
