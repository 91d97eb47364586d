#include "core/geometry/taut.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

#include "core/geometry/measure.h"
#include "core/geometry/vec.h"

namespace elbowroom {
namespace {

using kernel::toInches;
using kernel::toPoint;
using kernel::Vec;

constexpr double kEps = 1e-6;  // inches

double side(Vec a, Vec b, Vec c) {
  const double length = norm(b - a);
  return length < kEps ? 0 : ((b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x)) / length;
}
double apart(Vec a, Vec b) { return norm(b - a); }

bool crosses(Vec a, Vec b, Vec c, Vec d) {
  const double c_side = side(a, b, c), d_side = side(a, b, d), a_side = side(c, d, a), b_side = side(c, d, b);
  const auto opposite = [](double s, double t) { return (s > kEps && t < -kEps) || (s < -kEps && t > kEps); };
  return opposite(c_side, d_side) && opposite(a_side, b_side);
}

struct Scene {
  const Outline& room;
  std::vector<Vec> ring;
  std::vector<std::pair<Vec, Vec>> screens;

  bool inside(Vec p) const {
    const Point at = toPoint(p);
    return contains(room, at) || gapFromPoint(at, room).distance <= kContact;
  }
  // A straight piece stays in the room if it crosses no wall and, between the places where it touches
  // corners, every part is inside.
  bool free(Vec a, Vec b) const {
    if (apart(a, b) < kEps) return true;
    std::vector<double> cuts{0, 1};
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Vec c = ring[i], d = ring[(i + 1) % ring.size()];
      if (crosses(a, b, c, d)) return false;
      if (std::abs(side(a, b, c)) < kEps) {
        const double l = apart(a, b);
        cuts.push_back(((c.x - a.x) * (b.x - a.x) + (c.y - a.y) * (b.y - a.y)) / (l * l));
      }
    }
    for (const auto& [c, d] : screens)
      if (crosses(a, b, c, d)) return false;
    std::sort(cuts.begin(), cuts.end());
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      if (cuts[i] < 0 || cuts[i + 1] > 1 || cuts[i + 1] - cuts[i] < 1e-9) continue;
      const double t = (cuts[i] + cuts[i + 1]) / 2;
      if (!inside({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)})) return false;
    }
    return true;
  }
};

// A screen that stands at a wall, or meets another one, leaves no slit there: it is drawn on a little past
// that end, so that a way along the wall or through the meeting point crosses it.
constexpr double kIntoWall = 2, kPastMeeting = 0.01, kAtWall = 1;  // inches

struct End {
  Vec at;
  bool corner;  // ways may turn here
};
End endOf(const Segment& screen, bool first, const Outline& room, const std::vector<Segment>& screens) {
  const Point here = first ? screen.a : screen.b, other = first ? screen.b : screen.a;
  const Direction on = Direction::between(other, here);
  const auto past = [&](double inches) { return toInches(here + Length::fromInches(inches) * on); };
  if (gapToBoundary({here, here, here}, room).distance.inches() <= kAtWall) return {past(kIntoWall), false};
  for (const Segment& s : screens)
    if (&s != &screen && gapBetween(s, Segment{here, here}).distance <= kContact)
      return {past(kPastMeeting), true};
  return {toInches(here), true};
}

// Nearest place of the target in sight from p: the foot of the perpendicular or an end. A place behind a
// corner's shadow is found from that corner.
std::optional<Vec> nearestSeen(const Scene& scene, Vec p, Vec a, Vec b) {
  const double l = apart(a, b);
  std::vector<Vec> places{a, b};
  if (l > kEps) {
    const double t = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / (l * l);
    if (t > 0 && t < 1) places.push_back({a.x + t * (b.x - a.x), a.y + t * (b.y - a.y)});
  }
  std::optional<Vec> best;
  for (const Vec q : places)
    if ((!best || apart(p, q) < apart(p, *best)) && scene.free(p, q)) best = q;
  return best;
}

}  // namespace

std::optional<TautWay> tautWay(Point from, Segment target, const Outline& room,
                               const std::vector<Segment>& screens) {
  if (room.size() < 3) return std::nullopt;
  Scene scene{room, {}, {}};
  for (const Point& p : room) scene.ring.push_back(toInches(p));
  if (!scene.inside(toInches(from))) return std::nullopt;
  std::vector<Vec> nodes{toInches(from)};
  // A taut way turns only where the wall comes toward it.
  const double turn = signedAreaOf(room) > Area{} ? 1 : -1;
  for (std::size_t i = 0; i < scene.ring.size(); ++i) {
    const std::size_t n = scene.ring.size();
    const Vec before = scene.ring[(i + n - 1) % n], here = scene.ring[i], next = scene.ring[(i + 1) % n];
    if (turn * side(before, here, next) < -kEps) nodes.push_back(here);
  }
  for (const Segment& s : screens) {
    const End a = endOf(s, true, room, screens), b = endOf(s, false, room, screens);
    scene.screens.emplace_back(a.at, b.at);
    if (a.corner) nodes.push_back(a.at);
    if (b.corner) nodes.push_back(b.at);
  }
  const Vec a = toInches(target.a), b = toInches(target.b);
  // The straight way is nearest of all if nothing is in it; most questions end here.
  const auto straight = nearestSeen(scene, nodes[0], a, b);
  if (straight &&
      std::abs(apart(nodes[0], *straight) - gapBetween(Segment{from, from}, target).distance.inches()) < 1e-5)
    return TautWay{distance(from, toPoint(*straight)), {from, toPoint(*straight)}};

  constexpr double kFar = std::numeric_limits<double>::infinity();
  std::vector<double> way(nodes.size(), kFar);
  std::vector<int> before(nodes.size(), -1);
  std::vector<bool> done(nodes.size(), false);
  way[0] = 0;
  double best = kFar;
  int last = -1;
  Vec end{};
  for (;;) {
    int next = -1;
    for (std::size_t i = 0; i < nodes.size(); ++i)
      if (!done[i] && way[i] < kFar && (next < 0 || way[i] < way[static_cast<std::size_t>(next)]))
        next = static_cast<int>(i);
    if (next < 0 || way[static_cast<std::size_t>(next)] >= best) break;
    const auto n = static_cast<std::size_t>(next);
    done[n] = true;
    if (const auto seen = nearestSeen(scene, nodes[n], a, b);
        seen && way[n] + apart(nodes[n], *seen) < best) {
      best = way[n] + apart(nodes[n], *seen);
      last = next;
      end = *seen;
    }
    for (std::size_t i = 0; i < nodes.size(); ++i) {
      const double through = way[n] + apart(nodes[n], nodes[i]);
      if (done[i] || through >= way[i] || !scene.free(nodes[n], nodes[i])) continue;
      way[i] = through;
      before[i] = next;
    }
  }
  if (last < 0) return std::nullopt;
  TautWay found{Length::fromInches(best), {toPoint(end)}};
  for (int i = last; i >= 0; i = before[static_cast<std::size_t>(i)])
    found.points.insert(found.points.begin(), i == 0 ? from : toPoint(nodes[static_cast<std::size_t>(i)]));
  return found;
}

}  // namespace elbowroom
