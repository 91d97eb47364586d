#include "core/geometry/kernel.h"

namespace elbowroom::kernel {
namespace {

Interval hull(Interval a, Interval b) {
  if (a.empty()) return b;
  if (b.empty()) return a;
  return {std::min(a.from, b.from), std::max(a.to, b.to)};
}

Interval inDisc(Vec a, Vec d, Vec centre, double r) {
  const Vec m = a - centre;
  const double n = dot(d, d);
  if (n == 0) return dot(m, m) <= r * r ? Interval{0, 1} : Interval{};
  const double off = cross(d, m);
  const double under = n * r * r - off * off;
  if (under < 0) return {};
  const double half = std::sqrt(under) / n, middle = -dot(d, m) / n;
  return {std::max(0.0, middle - half), std::min(1.0, middle + half)};
}

// Narrows `in` to low <= at + t * rate <= high.
void clip(Interval& in, double at, double rate, double low, double high) {
  if (rate == 0) {
    if (at < low || at > high) in = {};
    return;
  }
  double t0 = (low - at) / rate, t1 = (high - at) / rate;
  if (t0 > t1) std::swap(t0, t1);
  in.from = std::max(in.from, t0);
  in.to = std::min(in.to, t1);
}

}  // namespace

Interval withinReach(Vec a, Vec b, Vec c, Vec d, double r) {
  const Vec along = b - a, edge = d - c;
  Interval reach = hull(inDisc(a, along, c, r), inDisc(a, along, d, r));
  const double n = norm(edge);
  if (n == 0) return reach;
  const Vec u = (1 / n) * edge;
  Interval strip{0, 1};
  clip(strip, dot(a - c, u), dot(along, u), 0, n);
  if (!strip.empty()) clip(strip, cross(u, a - c), cross(u, along), -r, r);
  return hull(reach, strip);
}

const std::vector<Interval>& farStretches(Vec a, Vec b, const std::vector<Vec>& ring, double r) {
  thread_local std::vector<Interval> near, far;
  near.clear();
  far.clear();
  const double low_x = std::min(a.x, b.x) - r, high_x = std::max(a.x, b.x) + r;
  const double low_y = std::min(a.y, b.y) - r, high_y = std::max(a.y, b.y) + r;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec c = ring[j], d = ring[i];
    if (std::max(c.x, d.x) < low_x || std::min(c.x, d.x) > high_x || std::max(c.y, d.y) < low_y ||
        std::min(c.y, d.y) > high_y) {
      continue;
    }
    const Interval in = withinReach(a, b, c, d, r);
    if (!in.empty()) near.push_back(in);
  }
  std::sort(near.begin(), near.end(), [](Interval x, Interval y) { return x.from < y.from; });
  double reached = 0;
  for (const Interval& in : near) {
    if (in.from > reached) far.push_back({reached, in.from});
    reached = std::max(reached, in.to);
  }
  if (reached < 1) far.push_back({reached, 1});
  return far;
}

}  // namespace elbowroom::kernel
