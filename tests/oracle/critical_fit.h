// Where a shape made of convex parts fits in a room, by brute force: an oracle that shares nothing with the
// search it judges.
//
// At one turn, the reference points at which a part meets a convex solid (or an edge of the walls or of
// another solid) are the inside of a convex polygon, the hull of all differences of their corners (CGAL).
// What is left of the sides of these polygons outside all others bounds everything free; the nearest free
// point to any point is that point itself or lies on what is left. Over turns: a part moved in by c on every
// side lies within itself turned by up to 2 asin(c / 2 reach), so where that smaller part has no place, no
// turn near by has any.
#pragma once

#include <CGAL/Exact_predicates_inexact_constructions_kernel.h>
#include <CGAL/convex_hull_2.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

#include "tests/oracle/flush_scenes.h"

namespace elbowroom::oracle {

struct Flat {
  double x = 0, y = 0;
};
inline Flat operator+(Flat a, Flat b) { return {a.x + b.x, a.y + b.y}; }
inline Flat operator-(Flat a, Flat b) { return {a.x - b.x, a.y - b.y}; }
inline Flat operator*(double k, Flat a) { return {k * a.x, k * a.y}; }
inline double dotOf(Flat a, Flat b) { return a.x * b.x + a.y * b.y; }
inline double crossOf(Flat a, Flat b) { return a.x * b.y - a.y * b.x; }

// A rectangle about the reference point, in inches, its sides along the shape's own axes, or turned against
// them.
struct Part {
  double x0, y0, x1, y1;
  double turned = 0;  // radians; the corners are about the turned axes
  // Keeps clear of the things that only some parts mind; of the room and all other things.
  bool strict = true, loose = true;
};
struct Figure {
  std::vector<Part> parts;
  double period;  // it looks the same after this turn
  double reach() const {
    double r = 0;
    for (const Part& p : parts)
      for (const double x : {p.x0, p.x1})
        for (const double y : {p.y0, p.y1}) r = std::max(r, std::hypot(x, y));
    return r;
  }
};
struct Spot {
  Flat at;
  double turn = 0;
};

class CriticalFit {
 public:
  // `strict`: things that only some parts of a figure keep clear of.
  explicit CriticalFit(const Scene& scene, const std::vector<Outline>& strict = {}) {
    room_ = flat(scene.room);
    for (std::size_t i = 0; i < room_.size(); ++i) addSolid({room_[i], room_[(i + 1) % room_.size()]}, false);
    const auto add = [&](const Outline& thing, bool only_strict) {
      std::vector<Flat> ring = flat(thing);
      if (isConvex(ring)) {
        addSolid(ring, only_strict);
      } else {
        for (std::size_t i = 0; i < ring.size(); ++i)
          addSolid({ring[i], ring[(i + 1) % ring.size()]}, only_strict);
      }
      rings_.push_back({std::move(ring), only_strict});
    };
    for (const Outline& thing : scene.things) add(thing, false);
    for (const Outline& thing : strict) add(thing, true);
  }

  // The free reference point nearest to `near` at this turn, every side of the figure moved in by `shrink`.
  std::optional<Flat> nearestAt(const Figure& figure, double turn, double shrink, Flat near) {
    const Flat u{std::cos(turn), std::sin(turn)}, v{-u.y, u.x};
    hulls_.clear();
    middles_.clear();
    for (const Part& part : figure.parts) {
      const Part p{part.x0 + shrink, part.y0 + shrink, part.x1 - shrink, part.y1 - shrink};
      if (p.x0 >= p.x1 || p.y0 >= p.y1) continue;
      const Flat pu = std::cos(part.turned) * u + std::sin(part.turned) * v, pv{-pu.y, pu.x};
      middles_.push_back({(p.x0 + p.x1) / 2 * pu + (p.y0 + p.y1) / 2 * pv, part.strict, part.loose});
      for (const Solid& solid : solids_)
        if (solid.only_strict ? part.strict : part.loose) addHull(solid.ring, p, pu, pv);
    }
    if (isFree(near)) return near;
    double best = std::numeric_limits<double>::infinity();
    std::optional<Flat> found;
    for (std::size_t h = 0; h < hulls_.size(); ++h) {
      const std::vector<Flat>& ring = hulls_[h].ring;
      for (std::size_t i = 0; i < ring.size(); ++i)
        sweepSide(ring[i], ring[(i + 1) % ring.size()], h, near, best, found);
    }
    return found;
  }

  // A place at any turn whose distance from `near` is below `within`; nothing: there is none, but for what is
  // within `shrink` + 1e-4 of fitting.
  std::optional<Spot> findWithin(const Figure& figure, double shrink, Flat near, double within) {
    struct Turns {
      double middle, half;
    };
    const double reach = figure.reach(), half = figure.period / 16;
    std::vector<Turns> open;
    for (int i = 7; i >= 0; --i) open.push_back({(2 * i + 1) * half, half});
    turns_tried = 0;
    const auto inside = [&](const std::optional<Flat>& p) {
      return p && std::hypot(p->x - near.x, p->y - near.y) < within;
    };
    while (!open.empty()) {
      const Turns t = open.back();
      open.pop_back();
      ++turns_tried;
      const double less = 2 * std::sin(t.half / 2) * reach;
      if (!inside(nearestAt(figure, t.middle, shrink + less, near))) continue;
      if (const auto p = nearestAt(figure, t.middle, shrink, near); inside(p)) return Spot{*p, t.middle};
      if (less < 1e-4) continue;
      open.push_back({t.middle + t.half / 2, t.half / 2});
      open.push_back({t.middle - t.half / 2, t.half / 2});
    }
    return std::nullopt;
  }
  std::optional<Spot> find(const Figure& figure, double shrink) {
    return findWithin(figure, shrink, {-1000, -1000}, std::numeric_limits<double>::infinity());
  }
  int turns_tried = 0;

 private:
  using Kernel = CGAL::Exact_predicates_inexact_constructions_kernel;
  static constexpr double kTouch = 1e-7;

  struct Solid {
    std::vector<Flat> ring;
    bool only_strict = false;
  };
  struct Middle {  // of a part
    Flat at;
    bool strict = true, loose = true;
  };
  struct Hull {
    std::vector<Flat> ring;  // counter-clockwise
    Flat low, high;
  };

  static std::vector<Flat> flat(const Outline& ring) {
    std::vector<Flat> out;
    for (const Point& p : ring) out.push_back({p.x.inches(), p.y.inches()});
    return out;
  }
  static bool isConvex(const std::vector<Flat>& ring) {
    int left = 0, right = 0;
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Flat a = ring[i], b = ring[(i + 1) % ring.size()], c = ring[(i + 2) % ring.size()];
      const double turn = crossOf(b - a, c - b);
      left += turn > 1e-9, right += turn < -1e-9;
    }
    return left == 0 || right == 0;
  }
  void addSolid(std::vector<Flat> ring, bool only_strict) {
    solids_.push_back({std::move(ring), only_strict});
  }

  void addHull(const std::vector<Flat>& solid, const Part& p, Flat u, Flat v) {
    points_.clear();
    for (const Flat s : solid)
      for (const double x : {p.x0, p.x1})
        for (const double y : {p.y0, p.y1}) {
          const Flat q = s - (x * u + y * v);
          points_.emplace_back(q.x, q.y);
        }
    corners_.clear();
    CGAL::convex_hull_2(points_.begin(), points_.end(), std::back_inserter(corners_));
    Hull hull;
    hull.low = {1e300, 1e300};
    hull.high = {-1e300, -1e300};
    for (const Kernel::Point_2& c : corners_) {
      hull.ring.push_back({c.x(), c.y()});
      hull.low = {std::min(hull.low.x, c.x()), std::min(hull.low.y, c.y())};
      hull.high = {std::max(hull.high.x, c.x()), std::max(hull.high.y, c.y())};
    }
    hulls_.push_back(std::move(hull));
  }

  static bool within(const std::vector<Flat>& ring, Flat p) {
    bool in = false;
    for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
      const Flat a = ring[j], b = ring[i];
      if ((a.y > p.y) != (b.y > p.y) && p.x < a.x + (p.y - a.y) / (b.y - a.y) * (b.x - a.x)) in = !in;
    }
    return in;
  }
  // No solid swallows a part, and each lies in the room. Where no boundary meets it, its middle tells.
  bool partsOutside(Flat p) const {
    for (const Middle& m : middles_) {
      if (m.loose && !within(room_, p + m.at)) return false;
      for (const Solid& thing : rings_)
        if ((thing.only_strict ? m.strict : m.loose) && within(thing.ring, p + m.at)) return false;
    }
    return true;
  }
  bool isFree(Flat p) const {
    for (const Hull& hull : hulls_) {
      bool in = true;
      for (std::size_t i = 0; i < hull.ring.size() && in; ++i) {
        const Flat a = hull.ring[i], d = hull.ring[(i + 1) % hull.ring.size()] - a;
        in = crossOf(d, p - a) > kTouch * std::hypot(d.x, d.y);
      }
      if (in) return false;
    }
    return partsOutside(p);
  }

  // What is left of a side outside all other polygons; its nearest point.
  void sweepSide(Flat a, Flat b, std::size_t own, Flat near, double& best, std::optional<Flat>& found) {
    const Flat d = b - a;
    const double squared = dotOf(d, d);
    if (squared == 0) return;
    const double foot = std::clamp(dotOf(near - a, d) / squared, 0.0, 1.0);
    const Flat at_foot = a + foot * d;
    if (std::hypot(at_foot.x - near.x, at_foot.y - near.y) >= best) return;
    covered_.clear();
    const double x0 = std::min(a.x, b.x), x1 = std::max(a.x, b.x), y0 = std::min(a.y, b.y),
                 y1 = std::max(a.y, b.y);
    for (std::size_t h = 0; h < hulls_.size(); ++h) {
      const Hull& hull = hulls_[h];
      if (h == own || hull.high.x < x0 || hull.low.x > x1 || hull.high.y < y0 || hull.low.y > y1) continue;
      double from = 0, to = 1;
      for (std::size_t i = 0; i < hull.ring.size() && from < to; ++i) {
        const Flat p = hull.ring[i], e = hull.ring[(i + 1) % hull.ring.size()] - p;
        const double n = std::hypot(e.x, e.y);
        const double at = crossOf(e, a - p) - kTouch * n, rate = crossOf(e, d);
        if (std::fabs(rate) < 1e-12 * n) {
          if (at <= 0) to = from;
        } else if (rate > 0) {
          from = std::max(from, -at / rate);
        } else {
          to = std::min(to, -at / rate);
        }
      }
      if (from < to) covered_.emplace_back(from, to);
      if (from <= 0 && to >= 1) return;
    }
    std::sort(covered_.begin(), covered_.end());
    double reached = 0;
    const auto left = [&](double from, double to) {
      if (from >= to) return;
      const Flat p = a + std::clamp(foot, from, to) * d;
      const double away = std::hypot(p.x - near.x, p.y - near.y);
      if (away < best && partsOutside(a + (from + to) / 2 * d)) best = away, found = p;
    };
    for (const auto& [from, to] : covered_) {
      left(reached, from);
      reached = std::max(reached, to);
    }
    left(reached, 1);
  }

  std::vector<Flat> room_;
  std::vector<Solid> rings_, solids_;
  std::vector<Hull> hulls_;
  std::vector<Middle> middles_;
  std::vector<Kernel::Point_2> points_, corners_;
  std::vector<std::pair<double, double>> covered_;
};

}  // namespace elbowroom::oracle
