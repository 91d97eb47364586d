#include "core/geometry/measure.h"

#include <cassert>

#include "core/geometry/kernel.h"

namespace elbowroom {
namespace {

using kernel::side;

__int128 twiceSignedArea(const Outline& ring) {
  __int128 twice = 0;
  for (std::size_t i = 2; i < ring.size(); ++i) {
    const Vector u = ring[i - 1] - ring[0], v = ring[i] - ring[0];
    twice += static_cast<__int128>(u.dx.nm()) * v.dy.nm() - static_cast<__int128>(u.dy.nm()) * v.dx.nm();
  }
  return twice;
}

bool foldsBack(Point a, Point b, Point c) {
  if (side(a, b, c) != 0) return false;
  const Vector u = b - a, v = c - b;
  return static_cast<__int128>(u.dx.nm()) * v.dx.nm() + static_cast<__int128>(u.dy.nm()) * v.dy.nm() < 0;
}

}  // namespace

Area signedAreaOf(const Outline& ring) {
  const __int128 twice = twiceSignedArea(ring);
  const __int128 half = twice < 0 ? -1'000'000 : 1'000'000;
  return Area::squareMicrometres(static_cast<std::int64_t>((twice + half) / 2'000'000));
}

Area areaOf(const Outline& ring) {
  const Area area = signedAreaOf(ring);
  return area < Area{} ? Area{} - area : area;
}

Box boundsOf(const Outline& ring) {
  assert(!ring.empty());
  Box box{ring.front(), ring.front()};
  for (const Point& p : ring) {
    box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
    box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
  }
  return box;
}

Box boundsOf(const std::vector<Outline>& rings) {
  Outline all;
  for (const Outline& ring : rings) all.insert(all.end(), ring.begin(), ring.end());
  return boundsOf(all);
}

Point centroidOf(const Outline& ring) {
  assert(!ring.empty());
  double twice = 0, x = 0, y = 0;
  for (std::size_t i = 2; i < ring.size(); ++i) {
    const kernel::Vec u = kernel::toInches(Point{} + (ring[i - 1] - ring[0]));
    const kernel::Vec v = kernel::toInches(Point{} + (ring[i] - ring[0]));
    const double part = kernel::cross(u, v);
    twice += part;
    x += part * (u.x + v.x);
    y += part * (u.y + v.y);
  }
  if (twice == 0) return ring.front();
  return ring[0] + Vector{Length::fromInches(x / (3 * twice)), Length::fromInches(y / (3 * twice))};
}

bool contains(const Outline& ring, Point p) {
  bool inside = false;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Point a = ring[j], b = ring[i];
    if (kernel::onSegment(a, b, p)) return true;
    if ((a.y > p.y) != (b.y > p.y)) {
      const int turn = side(a, b, p);
      if ((b.y > a.y) == (turn > 0)) inside = !inside;
    }
  }
  return inside;
}

std::optional<Point> selfCrossing(const Outline& ring) {
  const std::size_t n = ring.size();
  if (n < 3) return n == 0 ? Point{} : ring.front();
  for (std::size_t i = 0; i < n; ++i) {
    const Point a = ring[i], b = ring[(i + 1) % n];
    if (a == b || foldsBack(a, b, ring[(i + 2) % n])) return b;
    for (std::size_t j = i + 2; j < n; ++j) {
      if (i == 0 && j == n - 1) continue;
      const Point c = ring[j], d = ring[(j + 1) % n];
      if (kernel::segmentsTouch(a, b, c, d)) return kernel::sharedPoint(a, b, c, d);
    }
  }
  if (twiceSignedArea(ring) == 0) return ring.front();
  return std::nullopt;
}

Outline arcPoints(Point center, Length radius, Direction from, Angle sweep, int steps) {
  steps = std::max(steps, 1);
  Outline out;
  out.reserve(static_cast<std::size_t>(steps) + 1);
  for (int i = 0; i < steps; ++i) {
    const Angle part = Angle::microdegrees(sweep.microdegrees() * i / steps);
    out.push_back(center + radius * from.turned(part));
  }
  out.push_back(center + radius * from.turned(sweep));
  return out;
}

}  // namespace elbowroom
