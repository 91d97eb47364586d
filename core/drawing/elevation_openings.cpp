#include <algorithm>
#include <array>
#include <vector>

#include "core/drawing/elevation_parts.h"

namespace elbowroom {
namespace {

constexpr double kCasing = 2.25, kReveal = 0.25;

struct Hole {
  double left, right, bottom, top;
};
Hole holeOf(const Opening& o, double x) {
  const double half = o.width.inches() / 2, c = x + o.along.inches();
  const double bottom = o.kind == OpeningKind::window ? o.sill.value_or(Length{}).inches() : 0;
  return {c - half, c + half, bottom, bottom + o.height.inches()};
}

// From `first` to `last` along the wall, where an edge at `level` that the ceiling may cut has its corners.
std::vector<double> topBends(const CeilingLine& ceiling, double first, double last, double level) {
  std::vector<double> at{first, last};
  const auto within = [&](double along) {
    if (along > first && along < last) at.push_back(along);
  };
  for (std::size_t i = 0; i < ceiling.points.size(); ++i) {
    const double b = ceiling.points[i].along.inches(), over = ceiling.points[i].height.inches() - level;
    within(b);
    if (i == 0) continue;
    const CeilingPoint& previous = ceiling.points[i - 1];
    const double a = previous.along.inches(), before = previous.height.inches() - level;
    if (before * over < 0) within(a + (b - a) * before / (before - over));
  }
  std::sort(at.begin(), at.end());
  return at;
}

}  // namespace

void drawOpeningFront(Pen& pen, const Opening& o, double x) {
  const auto [left, right, bottom, top] = holeOf(o, x);
  const double half = (right - left) / 2, c = (left + right) / 2;
  pen.rectangle(Role::opening, left, bottom, right, top, 0, true);
  if (o.kind == OpeningKind::window) {
    pen.rectangle(Role::fixtureDetail, left + 1.5, bottom + 1.5, right - 1.5, top - 1.5);
    return;
  }
  // Elevation sign of a swing: lines from the latch side's corners to the middle of the hinge side; dashed
  // when the leaf opens away from the viewer.
  const Role role = o.swing == Swing::in ? Role::fixtureDetail : Role::clearZone;
  const auto swing = [&](double hinge, double latch) {
    pen.line(role, latch, top, hinge, (top + bottom) / 2);
    pen.line(role, latch, bottom, hinge, (top + bottom) / 2);
  };
  const auto slide = [&](bool to_right) {
    const double y = (top + bottom) / 2, from = to_right ? left + half * 0.6 : right - half * 0.6,
                 to = to_right ? right - half * 0.4 : left + half * 0.4, tip = to_right ? -3 : 3;
    pen.line(Role::fixtureDetail, from, y, to, y);
    pen.line(Role::fixtureDetail, to, y, to + tip, y + 2);
    pen.line(Role::fixtureDetail, to, y, to + tip, y - 2);
  };
  switch (o.action) {
    case DoorAction::hinged:
      return o.hinge == Hand::left ? swing(left, right) : swing(right, left);
    case DoorAction::doubleLeaf:
      return swing(left, c), swing(right, c), pen.line(Role::opening, c, bottom, c, top);
    case DoorAction::bifold:
      return pen.line(Role::opening, c, bottom, c, top);
    case DoorAction::pocket:
    case DoorAction::surfaceSliding:
      return slide(o.toward.value_or(Hand::right) == Hand::right);
    case DoorAction::cased:
      return;
  }
}

void drawPocket(Pen& pen, const PlacedOpening& placed, const WallFrame& wall, double x) {
  if (placed.cavity.empty()) return;
  double low = 1e9, high = -1e9;
  for (const Point& p : placed.cavity) {
    const double s = dot(p - wall.from, wall.along).inches();
    low = std::min(low, s), high = std::max(high, s);
  }
  const auto [left, right, bottom, top] = holeOf(placed.opening, x);
  // Of the cavity only what is beside the opening.
  if (x + low < left - 0.5) pen.rectangle(Role::hidden, x + low, bottom, left, top);
  if (x + high > right + 0.5) pen.rectangle(Role::hidden, right, bottom, x + high, top);
}

void drawCasing(Pen& pen, const Opening& o, const CeilingLine& ceiling, double x) {
  const auto [left, right, bottom, top] = holeOf(o, x);
  const double l = left - kReveal, r = right + kReveal, t = top + kReveal, b = bottom - kReveal;
  const bool window = o.kind == OpeningKind::window;
  const double low = window ? b - kCasing : 0, first = l - kCasing, last = r + kCasing, head = t + kCasing;
  std::vector<std::array<double, 2>> ring{{first, low}};
  for (const double at : topBends(ceiling, first - x, last - x, head))
    ring.push_back({x + at, std::min(head, heightAt(ceiling, at))});
  ring.push_back({last, low});
  pen.poly(Role::fixtureDetail, ring, window);
}

}  // namespace elbowroom
