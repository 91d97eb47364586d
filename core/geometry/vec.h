// Private to core/geometry: plane vectors in inches as doubles, the one type all its searches count with.
// Differences of coordinates within +-100 m stay exact in a double, products are good to 1e-5 nm.
#pragma once

#include <cmath>
#include <vector>

#include "core/geometry/point.h"

namespace elbowroom::kernel {

struct Vec {
  double x = 0, y = 0;
  friend Vec operator+(Vec a, Vec b) { return {a.x + b.x, a.y + b.y}; }
  friend Vec operator-(Vec a, Vec b) { return {a.x - b.x, a.y - b.y}; }
  friend Vec operator*(double k, Vec a) { return {k * a.x, k * a.y}; }
};
inline double dot(Vec a, Vec b) { return a.x * b.x + a.y * b.y; }
inline double cross(Vec a, Vec b) { return a.x * b.y - a.y * b.x; }
inline double norm(Vec a) { return std::sqrt(dot(a, a)); }

inline Vec toInches(Point p) { return {p.x.inches(), p.y.inches()}; }
inline Point toPoint(Vec p) { return {Length::fromInches(p.x), Length::fromInches(p.y)}; }
inline std::vector<Vec> toInches(const Outline& ring) {
  std::vector<Vec> out;
  out.reserve(ring.size());
  for (const Point& p : ring) out.push_back(toInches(p));
  return out;
}

}  // namespace elbowroom::kernel
