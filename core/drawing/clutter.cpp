#include "core/drawing/clutter.h"

#include <algorithm>
#include <cmath>

#include "core/drawing/pen.h"
#include "core/geometry/measure.h"

namespace elbowroom {
namespace {

double weightOf(Role role) {
  switch (role) {
    case Role::wallCut:
    case Role::wallCutExterior:
      return 40;
    case Role::doorLeaf:
    case Role::opening:
      return 12;
    case Role::fixture:
    case Role::fixtureRemoved:
      return 8;
    case Role::fixtureDetail:
      return 2;
    case Role::hatchShort:
    case Role::hatchClose:
    case Role::markShort:
    case Role::markClose:
    case Role::markUnknown:
      return 12;
    case Role::dimension:
      return 4;
    default:
      return 3;
  }
}

struct Window {
  double x0, y0, x1, y1;
};

// Does a segment whose own box meets this one pass through it? The axis left to try is the segment's normal.
bool crosses(double ax, double ay, double bx, double by, const Window& w) {
  const double nx = by - ay, ny = ax - bx, c = nx * ax + ny * ay;
  const double middle = nx * (w.x0 + w.x1) / 2 + ny * (w.y0 + w.y1) / 2 - c;
  return std::abs(middle) <= (std::abs(nx) * (w.x1 - w.x0) + std::abs(ny) * (w.y1 - w.y0)) / 2;
}

}  // namespace

void Clutter::addText(const Box& box) { texts_.push_back(box); }

void Clutter::add(const DisplayList& list) {
  const auto push = [&](Point a, Point b, double weight) {
    const double ax = a.x.inches(), ay = a.y.inches(), bx = b.x.inches(), by = b.y.inches();
    lines_.push_back(
        {ax, ay, bx, by, weight, std::min(ax, bx), std::max(ax, bx), std::min(ay, by), std::max(ay, by)});
  };
  const auto chain = [&](const std::vector<Point>& points, bool closed, double weight) {
    for (std::size_t i = 0; i + 1 < points.size(); ++i) push(points[i], points[i + 1], weight);
    if (closed && points.size() > 2) push(points.back(), points.front(), weight);
  };
  for (const DrawItem& item : list) {
    const double weight = weightOf(item.role);
    if (const auto* line = std::get_if<LinePrim>(&item.prim))
      push(line->a, line->b, weight);
    else if (const auto* poly = std::get_if<PolyPrim>(&item.prim)) {
      chain(poly->points, poly->closed, weight);
      if (poly->filled && item.role == Role::wallCut) solids_.push_back(poly->points);
    } else if (const auto* arc = std::get_if<ArcPrim>(&item.prim))
      chain(arcChords(*arc, 12), false, weight);
    else if (const auto* e = std::get_if<EllipsePrim>(&item.prim))
      chain(ellipseChords(*e, 16), true, weight);
    else if (const auto* text = std::get_if<TextPrim>(&item.prim))
      texts_.push_back(textBounds(*text));
    else
      chain(std::get<HatchPrim>(item.prim).outline, true, weight);
  }
}

double Clutter::costOf(const Box& box, double enough) const {
  double cost = 0;
  for (const Box& text : texts_) cost += overlap(text, box) ? kTextOverText : 0;
  if (cost >= enough) return cost;
  const Window w{box.low.x.inches(), box.low.y.inches(), box.high.x.inches(), box.high.y.inches()};
  for (const Line& line : lines_) {
    if (line.right < w.x0 || line.left > w.x1 || line.high < w.y0 || line.low > w.y1) continue;
    if (crosses(line.x0, line.y0, line.x1, line.y1, w)) cost += line.weight;
  }
  if (cost >= enough) return cost;
  const Point corners[] = {
      box.low, {box.high.x, box.low.y}, box.high, {box.low.x, box.high.y}, midpoint(box.low, box.high)};
  for (const Outline& solid : solids_) {
    cost += std::any_of(std::begin(corners), std::end(corners), [&](Point p) { return contains(solid, p); })
                ? 40
                : 0;
  }
  return cost;
}

std::optional<TextPrim> quietestText(const Clutter& taken, const std::vector<TextPlace>& places,
                                     double limit) {
  const auto best = quietest(places.size(), limit, [&](std::size_t i, double enough) {
    const TextPlace& place = places[i];
    if (place.penalty >= enough) return enough;
    return place.penalty + taken.costOf(textBounds(place.text), enough - place.penalty);
  });
  return best ? std::optional(places[*best].text) : std::nullopt;
}

}  // namespace elbowroom
