#include "core/geometry/kernel.h"
#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

using kernel::P;

constexpr double kRounding = 1e-7;

// The strip in its own frame: x across it, y ahead of the front line.
struct Strip {
  P origin, across, forward;
  double low = 0, high = 0;       // usable width, the forgiven sides taken off
  double front_at = 0, lean = 0;  // the front line: y = front_at + lean * x

  P local(P p) const {
    const double x = kernel::dot(p - origin, across);
    return {x, kernel::dot(p - origin, forward) - front_at - lean * x};
  }
  P world(P q) const { return origin + q.x * across + (q.y + front_at + lean * q.x) * forward; }
};

Strip stripOf(Segment front, Direction ahead) {
  const double n = std::hypot(ahead.x, ahead.y);
  Strip strip;
  strip.origin = kernel::inInches(front.a);
  strip.forward = n > 0 ? P{ahead.x / n, ahead.y / n} : P{1, 0};
  strip.across = {strip.forward.y, -strip.forward.x};
  const P end = strip.local(kernel::inInches(front.b));
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
  P at;
};

// The part of the edge within the strip and ahead of contact; its nearest point.
Hit nearestOn(P a, P b, const Strip& strip) {
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
  const P p = a + t * (b - a);
  return {p.y, p};
}

// Is the strip already blocked right at its front? `solid_inside`: the ring is solid, else its outside is.
bool blockedAtFront(const std::vector<P>& ring, const Outline& outline, const Strip& strip, bool solid_inside,
                    P* at) {
  const double y = kContact.inches() + kRounding;
  std::vector<double> cuts{strip.low, strip.high};
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const P a = ring[j], b = ring[i];
    if ((a.y > y) == (b.y > y)) continue;
    const double x = a.x + (y - a.y) / (b.y - a.y) * (b.x - a.x);
    if (x > strip.low && x < strip.high) cuts.push_back(x);
  }
  std::sort(cuts.begin(), cuts.end());
  for (std::size_t i = 1; i < cuts.size(); ++i) {
    const bool point_strip = strip.low == strip.high;
    if (!point_strip && cuts[i] - cuts[i - 1] < kRounding) continue;
    const double x = (cuts[i - 1] + cuts[i]) / 2;
    if (contains(outline, kernel::toPoint(strip.world({x, y}))) != solid_inside) continue;
    *at = {x, 0};
    return true;
  }
  return false;
}

Hit firstHit(const Outline& outline, const Strip& strip, bool solid_inside) {
  std::vector<P> ring;
  ring.reserve(outline.size());
  for (const Point& p : outline) ring.push_back(strip.local(kernel::inInches(p)));
  Hit best;
  if (blockedAtFront(ring, outline, strip, solid_inside, &best.at)) return best.distance = 0, best;
  for (std::size_t i = 0, j = ring.size() - 1; i < ring.size(); j = i++) {
    const Hit hit = nearestOn(ring[j], ring[i], strip);
    if (hit.distance < best.distance) best = hit;
  }
  return best;
}

}  // namespace

Ahead clearAhead(Segment front, Direction ahead, const Outline& room, const std::vector<Outline>& obstacles) {
  const Strip strip = stripOf(front, ahead);
  Hit best;
  int hit = -1;
  if (room.size() >= 3) best = firstHit(room, strip, false);
  for (std::size_t i = 0; i < obstacles.size(); ++i) {
    if (obstacles[i].size() < 3) continue;
    const Hit other = firstHit(obstacles[i], strip, true);
    // An obstacle flush on the wall ahead is named before the wall.
    if (other.distance < best.distance || (hit < 0 && other.distance == best.distance)) {
      best = other;
      hit = static_cast<int>(i);
    }
  }
  if (best.distance == HUGE_VAL) return {Length{}, midpoint(front.a, front.b), -1};
  return {Length::fromInches(best.distance), kernel::toPoint(strip.world(best.at)), hit};
}

}  // namespace elbowroom
