#include "core/geometry/convex_parts.h"

#include <algorithm>

#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"

namespace elbowroom::kernel {
namespace {

class Splitting {
 public:
  explicit Splitting(Outline ring) : ring_(std::move(ring)) {}

  std::vector<Outline> parts() {
    const std::size_t n = ring_.size();
    std::vector<std::size_t> inward;  // corners at which the ring turns the other way
    for (std::size_t i = 0; i < n; ++i)
      if (side(at(i + n - 1), at(i), at(i + 1)) < 0) inward.push_back(i);
    if (inward.empty()) return {ring_};
    for (std::size_t k = 0; k < inward.size(); ++k)
      split(inward[k], k + 1 < inward.size() ? inward[k + 1] : inward[0] + n);
    return std::move(found_);
  }

 private:
  const Point& at(std::size_t i) const { return ring_[i % ring_.size()]; }

  // The edges from one corner to another, between which the ring turns one way only.
  void split(std::size_t first, std::size_t last) {
    if (last - first == 1 || isPart(first, last)) {
      Outline part;
      for (std::size_t i = first; i <= last; ++i) part.push_back(at(i));
      found_.push_back(std::move(part));
      return;
    }
    const std::size_t middle = (first + last) / 2;
    split(first, middle);
    split(middle, last);
  }

  // As they turn one way only, edges that go round more than once rise from the closing line again.
  bool turnsOnce(std::size_t first, std::size_t last) const {
    const Point a = at(first), b = at(last);
    enum { rising, falling, level } now = rising;
    for (std::size_t i = first; i < last; ++i) {
      const Vector step = at(i + 1) - at(i);
      const int rise = side(b, a, b + step);
      const bool along = rise == 0 && (withinBox(b, b + step, a) || withinBox(b, a, b + step));
      if (now == rising && (rise < 0 || (rise == 0 && !along)))
        now = falling;
      else if (now != rising && along)
        now = level;
      else if ((now == falling && rise > 0) || now == level)
        return false;
    }
    return true;
  }

  // Closed by a straight line, are these edges the outline of a convex piece of the solid?
  bool isPart(std::size_t first, std::size_t last) const {
    const Point a = at(first), b = at(last);
    if (a == b || side(at(last - 1), b, a) < 0 || side(b, a, at(first + 1)) < 0 || !turnsOnce(first, last))
      return false;
    // What lies within the piece but not in the solid is shut off by the ring, which would have to come in
    // across the closing line and turn round there.
    const auto within = [&](Point p) {
      if (side(b, a, p) <= 0) return false;
      for (std::size_t i = first; i < last; ++i)
        if (side(at(i), at(i + 1), p) <= 0) return false;
      return true;
    };
    return std::none_of(ring_.begin(), ring_.end(), within);
  }

  Outline ring_;
  std::vector<Outline> found_;
};

}  // namespace

std::vector<Outline> convexParts(const Outline& solid) {
  Outline ring;
  for (const Point& p : solid)
    if (ring.empty() || p != ring.back()) ring.push_back(p);
  while (ring.size() > 1 && ring.front() == ring.back()) ring.pop_back();
  if (ring.size() < 2) return {};
  if (ring.size() == 2) return std::vector<Outline>{ring};
  if (signedAreaOf(ring) < Area{}) std::reverse(ring.begin(), ring.end());
  return Splitting(std::move(ring)).parts();
}

}  // namespace elbowroom::kernel
