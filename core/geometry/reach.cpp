#include "core/geometry/reach.h"

#include "core/geometry/kernel.h"

namespace elbowroom {
namespace {

using kernel::Vec;

// Where along a..b (0 to 1) the line through it meets the segment c..d; nullopt: parallel or beside it.
std::optional<double> meeting(Vec a, Vec b, Vec c, Vec d, double slack) {
  const Vec u = b - a, v = d - c;
  const double across = cross(u, v);
  if (across == 0) return std::nullopt;
  const double on = cross(c - a, u) / across;
  if (on < -slack || on > 1 + slack) return std::nullopt;
  return cross(c - a, v) / across;
}

class Sight {
 public:
  Sight(const Outline& room, const std::vector<Segment>& opaque)
      : room_(room), ring_(kernel::toInches(room)) {
    for (const Segment& s : opaque) {
      Vec a = kernel::toInches(s.a), b = kernel::toInches(s.b);
      const double n = kernel::norm(b - a);
      if (n == 0) continue;
      // What stands at a wall leaves no gap there.
      const Vec more = (kContact.inches() / n) * (b - a);
      if (isOnWall(a)) a = a - more;
      if (isOnWall(b)) b = b + more;
      opaque_.push_back({a, b});
    }
  }

  bool reaches(Vec from, Vec to) const {
    constexpr double kTouch = 1e-9;
    for (const auto& [a, b] : opaque_) {
      const auto at = meeting(from, to, a, b, -kTouch);
      if (at && *at > kTouch && *at < 1 - kTouch) return false;
    }
    // Where it meets the walls it may leave the room: each part in between lies within.
    std::vector<double> cuts{0, 1};
    const double n = dot(to - from, to - from);
    for (std::size_t i = 0, j = ring_.size() - 1; i < ring_.size(); j = i++) {
      if (const auto at = meeting(from, to, ring_[j], ring_[i], kTouch); at && *at > 0 && *at < 1)
        cuts.push_back(*at);
      const double corner = n > 0 ? dot(ring_[i] - from, to - from) / n : 0;
      if (corner > 0 && corner < 1) cuts.push_back(corner);
    }
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i)
      if (!inRoom(from + (cuts[i] + cuts[i + 1]) / 2 * (to - from))) return false;
    return true;
  }

  const std::vector<std::pair<Vec, Vec>>& opaque() const { return opaque_; }
  std::vector<Vec> edgesOfShadows() const {
    std::vector<Vec> ends = ring_;
    for (const auto& [a, b] : opaque_) ends.insert(ends.end(), {a, b});
    return ends;
  }

 private:
  bool isOnWall(Vec p) const {
    for (std::size_t i = 0, j = ring_.size() - 1; i < ring_.size(); j = i++)
      if (kernel::norm(kernel::nearestOnSegment(p, ring_[j], ring_[i]) - p) <= kContact.inches()) return true;
    return false;
  }
  bool inRoom(Vec p) const { return contains(room_, kernel::toPoint(p)) || isOnWall(p); }

  const Outline& room_;
  std::vector<Vec> ring_;
  std::vector<std::pair<Vec, Vec>> opaque_;
};

}  // namespace

std::optional<Gap> gapInSight(Point from, const std::vector<Segment>& targets, const Outline& room,
                              const std::vector<Segment>& opaque) {
  const Sight sight(room, opaque);
  const std::vector<Vec> ends = sight.edgesOfShadows();
  const Vec eye = kernel::toInches(from);
  std::optional<Vec> best;
  const auto offer = [&](Vec p) {
    if (best && kernel::norm(p - eye) >= kernel::norm(*best - eye)) return;
    if (sight.reaches(eye, p)) best = p;
  };
  for (const Segment& target : targets) {
    const Vec a = kernel::toInches(target.a), b = kernel::toInches(target.b);
    const Vec near = kernel::nearestOnSegment(eye, a, b);
    if (sight.reaches(eye, near)) {
      offer(near);
      continue;
    }
    offer(a);
    offer(b);
    for (const Vec& end : ends)
      if (const auto at = meeting(a, b, eye, end, HUGE_VAL); at && *at > 0 && *at < 1)
        offer(a + *at * (b - a));
    for (const auto& [c, d] : sight.opaque())
      if (const auto at = meeting(a, b, c, d, 0); at && *at > 0 && *at < 1) offer(a + *at * (b - a));
  }
  if (!best) return std::nullopt;
  return Gap{Length::fromInches(kernel::norm(*best - eye)), from, kernel::toPoint(*best), false};
}

std::vector<Stretch> stretchesWithin(Segment line, const Outline& thing, Length reach) {
  const Vec a = kernel::toInches(line.a), b = kernel::toInches(line.b);
  std::vector<kernel::Interval> parts;
  for (std::size_t i = 0, j = thing.size() - 1; i < thing.size(); j = i++) {
    const kernel::Interval part =
        kernel::withinReach(a, b, kernel::toInches(thing[j]), kernel::toInches(thing[i]), reach.inches());
    if (!part.empty()) parts.push_back(part);
  }
  std::sort(parts.begin(), parts.end(), [](const auto& x, const auto& y) { return x.from < y.from; });
  const Length whole = distance(line.a, line.b);
  std::vector<Stretch> found;
  for (const kernel::Interval& part : parts) {
    const Stretch s{whole.scaled(std::clamp(part.from, 0.0, 1.0)),
                    whole.scaled(std::clamp(part.to, 0.0, 1.0))};
    if (!found.empty() && s.from <= found.back().to)
      found.back().to = std::max(found.back().to, s.to);
    else
      found.push_back(s);
  }
  return found;
}

}  // namespace elbowroom
