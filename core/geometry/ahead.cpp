#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

using kernel::Vec;

constexpr double kRounding = 1e-7;

// The strip in its own frame: x across it, y ahead of the front line.
struct Strip {
  Vec origin, across, forward;
  double low = 0, high = 0;       // usable width, the forgiven sides taken off
  double front_at = 0, lean = 0;  // the front line: y = front_at + lean * x

  Vec local(Vec p) const {
    const double x = kernel::dot(p - origin, across);
    return {x, kernel::dot(p - origin, forward) - front_at - lean * x};
  }
  Vec world(Vec q) const { return origin + q.x * across + (q.y + front_at + lean * q.x) * forward; }
};

Strip stripOf(Segment front, Direction ahead) {
  const double n = std::hypot(ahead.x, ahead.y);
  Strip strip;
  strip.origin = kernel::toInches(front.a);
  strip.forward = n > 0 ? Vec{ahead.x / n, ahead.y / n} : Vec{1, 0};
  strip.across = {strip.forward.y, -strip.forward.x};
  const Vec end = strip.local(kernel::toInches(front.b));
  strip.low = std::min(0.0, end.x) + kContact.inches() + kRounding;
  strip.high = std::max(0.0, end.x) - kContact.inches() - kRounding;
  if (strip.low > strip.high) strip.low = strip.high = end.x / 2;
  if (std::abs(end.x) > 1e-3) {
    strip.lean = end.y / end.x;
  } else {
    strip.front_at = std::max(0.0, end.y);
  }
  return strip;
}

struct Hit {
  double distance = HUGE_VAL;
  Vec at;
};

// The part of the edge within the strip and ahead of contact; its nearest point.
Hit nearestOn(Vec a, Vec b, const Strip& strip) {
  double from = 0, to = 1;
  const auto keep = [&](double at_a, double at_b) {  // the part where the value is >= 0
    if (at_a < 0 && at_b < 0) return from = 1, to = 0, void();
    if (at_a < 0) from = std::max(from, at_a / (at_a - at_b));
    if (at_b < 0) to = std::min(to, at_a / (at_a - at_b));
  };
  keep(a.x - strip.low, b.x - strip.low);
  keep(strip.high - a.x, strip.high - b.x);
  keep(a.y - kContact.inches(), b.y - kContact.inches());
  if (from > to) return {};
  const double slope = b.y - a.y;
  const double t = std::abs(slope) < 1e-9 ? (from + to) / 2 : slope > 0 ? from : to;
  const Vec p = a + t * (b - a);
  return {p.y, p};
}

// A ring in the strip's frame and the box round it.
struct LocalRing {
  std::vector<Vec> points;
  Vec low, high;

  void take(const Outline& outline, const Strip& strip) {
    points.clear();
    low = {HUGE_VAL, HUGE_VAL};
    high = {-HUGE_VAL, -HUGE_VAL};
    for (const Point& p : outline) {
      const Vec q = strip.local(kernel::toInches(p));
      low = {std::min(low.x, q.x), std::min(low.y, q.y)};
      high = {std::max(high.x, q.x), std::max(high.y, q.y)};
      points.push_back(q);
    }
  }
};

// Is the strip already blocked right at its front? `solid_inside`: the ring is solid, else its outside is.
bool blockedAtFront(const std::vector<Vec>& ring, const Outline& outline, const Strip& strip,
                    bool solid_inside, Vec* at) {
  const double y = kContact.inches() + kRounding;
  thread_local std::vector<double> cuts;
  cuts.clear();
  bool inside = false;  // at the left end of the strip
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Vec a = ring[j], b = ring[i];
    if ((a.y > y) == (b.y > y)) continue;
    const double x = a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x);
    if (x <= strip.low)
      inside = !inside;
    else if (x < strip.high)
      cuts.push_back(x);
  }
  if (strip.low == strip.high) {
    if (contains(outline, kernel::toPoint(strip.world({strip.low, y}))) != solid_inside) return false;
    *at = {strip.low, 0};
    return true;
  }
  std::sort(cuts.begin(), cuts.end());
  cuts.push_back(strip.high);
  double from = strip.low;
  for (const double to : cuts) {
    if (inside == solid_inside && to - from >= kRounding) {
      *at = {(from + to) / 2, 0};
      return true;
    }
    inside = !inside;
    from = to;
  }
  return false;
}

// Is the whole box beside the strip, behind its front or beyond `nearest`?
bool boxMisses(const Box& box, const Strip& strip, double nearest) {
  constexpr double kSure = 1e-6;
  const Vec low = kernel::toInches(box.low), high = kernel::toInches(box.high);
  const Vec middle = strip.local(0.5 * (low + high)), half = 0.5 * (high - low);
  const Vec up = strip.forward - strip.lean * strip.across;
  const double x = half.x * std::abs(strip.across.x) + half.y * std::abs(strip.across.y) + kSure;
  const double y = half.x * std::abs(up.x) + half.y * std::abs(up.y) + kSure;
  return middle.x + x < strip.low || middle.x - x > strip.high || middle.y + y < kContact.inches() ||
         middle.y - y > nearest;
}

// The room's boundary, or a solid whose box does not miss the strip. `nearest`: what is known to be hit
// already; nothing beyond it is looked for.
Hit firstHit(const Outline& outline, const Strip& strip, bool solid_inside, double nearest = HUGE_VAL) {
  thread_local LocalRing ring;
  ring.take(outline, strip);
  if (solid_inside && (ring.high.x < strip.low || ring.low.x > strip.high ||
                       ring.high.y < kContact.inches() || ring.low.y > nearest)) {
    return {};
  }
  Hit best;
  if (!solid_inside || ring.low.y <= kContact.inches() + kRounding)
    if (blockedAtFront(ring.points, outline, strip, solid_inside, &best.at)) return best.distance = 0, best;
  const std::vector<Vec>& points = ring.points;
  for (std::size_t i = 0, j = points.size() - 1; i < points.size(); j = i++) {
    const Hit hit = nearestOn(points[j], points[i], strip);
    if (hit.distance < best.distance) best = hit;
  }
  return best;
}

Hit hitOfRoom(const Outline& room, const Strip& strip) {
  return room.size() >= 3 ? firstHit(room, strip, false) : Hit{};
}

Ahead aheadTo(const Hit& hit, const Strip& strip, Segment front, int which) {
  if (hit.distance == HUGE_VAL) return {Length{}, midpoint(front.a, front.b), -1};
  return {Length::fromInches(hit.distance), kernel::toPoint(strip.world(hit.at)), which};
}

Ahead withObstacles(Hit best, const Strip& strip, Segment front, const std::vector<BoxedOutline>& obstacles) {
  int hit = -1;
  for (std::size_t i = 0; i < obstacles.size(); ++i) {
    if (obstacles[i].outline->size() < 3 || boxMisses(obstacles[i].box, strip, best.distance)) continue;
    const Hit other = firstHit(*obstacles[i].outline, strip, true, best.distance);
    // An obstacle flush on the wall ahead is named before the wall.
    if (other.distance < best.distance || (hit < 0 && other.distance == best.distance)) {
      best = other;
      hit = static_cast<int>(i);
    }
  }
  return aheadTo(best, strip, front, hit);
}

}  // namespace

Ahead clearAhead(Segment front, Direction ahead, const Outline& room,
                 const std::vector<BoxedOutline>& obstacles) {
  const Strip strip = stripOf(front, ahead);
  return withObstacles(hitOfRoom(room, strip), strip, front, obstacles);
}

AheadBoth clearAheadBoth(Segment front, Direction ahead, const Outline& room,
                         const std::vector<BoxedOutline>& obstacles) {
  const Strip strip = stripOf(front, ahead);
  const Hit wall = hitOfRoom(room, strip);
  return {aheadTo(wall, strip, front, -1), withObstacles(wall, strip, front, obstacles)};
}

}  // namespace elbowroom
