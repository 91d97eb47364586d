#include "core/drawing/clutter.h"

#include <algorithm>

#include "core/drawing/pen.h"

namespace elbowroom {
namespace {

double weightOf(Role role) {
  switch (role) {
    case Role::wallCut:
    case Role::wallCutExterior: return 40;
    case Role::doorLeaf:
    case Role::opening: return 12;
    case Role::fixture:
    case Role::fixtureRemoved: return 8;
    case Role::fixtureDetail: return 2;
    case Role::hatchShort:
    case Role::hatchClose:
    case Role::markShort:
    case Role::markClose:
    case Role::markUnknown: return 12;
    case Role::dimension: return 4;
    default: return 3;
  }
}

// Liang-Barsky: does the segment pass through the box?
bool meets(const Segment& s, const Box& box) {
  const double x = s.a.x.inches(), y = s.a.y.inches();
  const double dx = (s.b.x - s.a.x).inches(), dy = (s.b.y - s.a.y).inches();
  double t0 = 0, t1 = 1;
  const auto clip = [&](double p, double q) {
    if (p == 0) return q >= 0;
    const double r = q / p;
    if (p < 0) t0 = std::max(t0, r);
    else t1 = std::min(t1, r);
    return t0 <= t1;
  };
  return clip(-dx, x - box.low.x.inches()) && clip(dx, box.high.x.inches() - x) &&
         clip(-dy, y - box.low.y.inches()) && clip(dy, box.high.y.inches() - y);
}

}  // namespace

bool overlap(const Box& a, const Box& b) {
  return a.low.x < b.high.x && b.low.x < a.high.x && a.low.y < b.high.y && b.low.y < a.high.y;
}

Box grown(const Box& box, Length by) {
  return {{box.low.x - by, box.low.y - by}, {box.high.x + by, box.high.y + by}};
}

void Clutter::addText(const Box& box) { texts_.push_back(box); }

void Clutter::add(const DisplayList& list) {
  const auto chain = [&](const std::vector<Point>& points, bool closed, double weight) {
    for (std::size_t i = 0; i + 1 < points.size(); ++i) lines_.push_back({{points[i], points[i + 1]}, weight});
    if (closed && points.size() > 2) lines_.push_back({{points.back(), points.front()}, weight});
  };
  for (const DrawItem& item : list) {
    const double weight = weightOf(item.role);
    if (const auto* line = std::get_if<LinePrim>(&item.prim)) lines_.push_back({{line->a, line->b}, weight});
    else if (const auto* poly = std::get_if<PolyPrim>(&item.prim)) chain(poly->points, poly->closed, weight);
    else if (const auto* arc = std::get_if<ArcPrim>(&item.prim)) chain(arcChords(*arc, 12), false, weight);
    else if (const auto* e = std::get_if<EllipsePrim>(&item.prim)) chain(ellipseChords(*e, 16), true, weight);
    else if (const auto* text = std::get_if<TextPrim>(&item.prim)) texts_.push_back(textBounds(*text));
    else chain(std::get<HatchPrim>(item.prim).outline, true, weight);
  }
}

bool Clutter::meetsText(const Box& box) const {
  return std::any_of(texts_.begin(), texts_.end(), [&](const Box& t) { return overlap(t, box); });
}

double Clutter::costOf(const Box& box) const {
  double cost = 0;
  for (const Box& text : texts_) cost += overlap(text, box) ? 1000 : 0;
  for (const Line& line : lines_) cost += meets(line.s, box) ? line.weight : 0;
  return cost;
}

}  // namespace elbowroom
