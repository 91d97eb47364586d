#include "core/geometry/held_discs.h"

#include <algorithm>
#include <optional>

namespace elbowroom::floor_kernel {
namespace {

constexpr double kTouch = 1e-7, kSame = 1e-5, kFar = 1e5;  // inches
constexpr int kMostAdded = 10'000;                         // stops what rounding might keep going

// Discs through the origin `p` and two points of the boundary. Turned inside out about p, a disc through p is
// a half-plane beyond a line; those that hold no point of the boundary miss the hull of the boundary, and the
// nearest lines of that hull are the largest discs. Straight edges become arcs: the hull of the corners is
// made wider where an edge reaches into a disc, by the point that reaches in farthest.
class Turning {
 public:
  Turning(const Kernel& kernel, Vec p) : kernel_(kernel), p_(p) {
    hull_.reserve(64);
    setCorners();
  }

  std::vector<Disc> discs() {
    std::vector<Disc> discs;
    std::size_t i = 0, done = 0;
    for (int added = 0; done < hull_.size() && added < kMostAdded && hull_.size() >= 3;) {
      i = i < hull_.size() ? i : 0;
      Corner& corner = hull_[i];
      if (corner.done) {
        ++done, ++i;
        continue;
      }
      const Vec a = corner.off, b = hull_[next(i)].off;
      if (norm(b - a) < kSame) {
        corner.done = true;
        continue;
      }
      const Vec middle = middleOf(a, b);
      if (const std::optional<Vec> in = reachingIn(middle, a, b)) {
        i = widen(*in);
        done = 0;
        ++added;
        continue;
      }
      corner.done = true;
      // Along one edge discs only grow or only shrink; and they grow on past a disc with both points on one
      // side.
      if (cross(middle, a) * cross(middle, b) > 0) continue;
      const double radius = kernel_.valueAt(p_ + middle).f;
      if (radius >= norm(middle) - 1e-6) discs.push_back({p_ + middle, radius});
    }
    return discs;
  }

 private:
  struct Corner {
    Vec turned, off;    // inside out; relative to p
    bool done = false;  // with the next one
  };
  static Corner cornerAt(Vec off) { return {(1 / dot(off, off)) * off, off, false}; }
  std::size_t next(std::size_t i) const { return i + 1 < hull_.size() ? i + 1 : 0; }
  std::size_t before(std::size_t i) const { return i > 0 ? i - 1 : hull_.size() - 1; }
  static bool flat(const Corner& a, const Corner& b, const Corner& c) {
    return cross(b.turned - a.turned, c.turned - b.turned) <= 0;
  }

  void setCorners() {
    std::vector<Corner> corners;
    corners.reserve(kernel_.edges.size());
    for (const Edge& e : kernel_.edges) corners.push_back(cornerAt(e.a - p_));
    std::sort(corners.begin(), corners.end(), [](const Corner& a, const Corner& b) {
      return a.turned.x < b.turned.x || (a.turned.x == b.turned.x && a.turned.y < b.turned.y);
    });
    const auto half = [&](auto from, auto to) {
      const std::size_t first = hull_.size();
      for (; from != to; ++from) {
        while (hull_.size() >= first + 2 && flat(hull_[hull_.size() - 2], hull_.back(), *from))
          hull_.pop_back();
        hull_.push_back(*from);
      }
      hull_.pop_back();
    };
    half(corners.begin(), corners.end());
    half(corners.rbegin(), corners.rend());
  }

  // Takes the point into the hull; the first place whose disc has changed.
  std::size_t widen(Vec off) {
    std::size_t i = 0;
    while (i < hull_.size() && !(cross(hull_[i].off, off) >= 0 && cross(off, hull_[next(i)].off) > 0)) ++i;
    if (i == hull_.size()) return hull_.clear(), 0;
    const auto erase = [&](std::size_t k) { hull_.erase(hull_.begin() + static_cast<std::ptrdiff_t>(k)); };
    std::size_t at = i + 1;
    hull_.insert(hull_.begin() + static_cast<std::ptrdiff_t>(at), cornerAt(off));
    while (hull_.size() > 3 && flat(hull_[at], hull_[next(at)], hull_[next(next(at))])) {
      const std::size_t gone = next(at);
      erase(gone);
      at -= gone < at;
    }
    while (hull_.size() > 3 && flat(hull_[before(before(at))], hull_[before(at)], hull_[at])) {
      const std::size_t gone = before(at);
      erase(gone);
      at -= gone < at;
    }
    hull_[before(at)].done = false;
    return before(at);
  }

  // Middle of the disc through the origin, a and b.
  static Vec middleOf(Vec a, Vec b) {
    const double turn = cross(a, b), aa = dot(a, a) / 2, bb = dot(b, b) / 2;
    const Vec scaled{aa * b.y - bb * a.y, bb * a.x - aa * b.x};
    if (turn * kFar > norm(scaled)) return (1 / turn) * scaled;
    const Vec along = (1 / dot(b, b)) * b - (1 / dot(a, a)) * a;
    return (kFar / norm(along)) * Vec{along.y, -along.x};
  }

  // The point of the boundary nearest to `middle` that is nearer than the radius, not on an edge through a
  // and b.
  std::optional<Vec> reachingIn(Vec middle, Vec a, Vec b) const {
    const double radius = norm(middle) - kTouch;
    const Vec at = p_ + middle;
    double least = radius * radius;
    std::optional<Vec> nearest;
    for (const Ring& ring : kernel_.rings) {
      if (ring.squareTo(at) >= least && &ring != &kernel_.rings.front()) continue;
      for (int i = ring.first; i < ring.last; ++i) {
        const Edge& e = kernel_.edges[static_cast<std::size_t>(i)];
        const Vec q = e.nearest(at), off = q - at;
        const double square = dot(off, off);
        if (square >= least) continue;
        const double length = norm(e.d);
        const auto on = [&](Vec c) { return std::fabs(cross(e.d, p_ + c - e.a)) <= 1e-6 * length; };
        if (on(a) && on(b)) continue;
        least = square;
        nearest = q - p_;
      }
    }
    return nearest;
  }

  const Kernel& kernel_;
  Vec p_;
  std::vector<Corner> hull_;  // counter-clockwise
};

}  // namespace

std::vector<Disc> discsHolding(const Kernel& kernel, Vec p) { return Turning(kernel, p).discs(); }

}  // namespace elbowroom::floor_kernel
