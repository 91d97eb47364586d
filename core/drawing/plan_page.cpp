#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/length_text.h"
#include "core/drawing/figures.h"
#include "core/drawing/marks.h"
#include "core/drawing/page.h"
#include "core/drawing/plan_column.h"

namespace elbowroom {
namespace {

// The part of a line or zone within the box; empty: none.
Outline clippedTo(const Box& box, Outline points) {
  const struct {
    Length Point::*axis;
    Length limit;
    int sign;
  } sides[] = {{&Point::x, box.low.x, 1},
               {&Point::x, box.high.x, -1},
               {&Point::y, box.low.y, 1},
               {&Point::y, box.high.y, -1}};
  const bool closed = points.size() > 2;
  for (const auto& side : sides) {
    Outline kept;
    const auto inside = [&](const Point& p) { return (p.*side.axis - side.limit) * side.sign >= Length{}; };
    for (std::size_t i = 0; i < points.size(); ++i) {
      const Point a = points[i];
      if (inside(a)) kept.push_back(a);
      if (!closed && i + 1 == points.size()) break;
      const Point b = points[(i + 1) % points.size()];
      if (inside(a) == inside(b)) continue;
      const double t = (side.limit - a.*side.axis) / (b.*side.axis - a.*side.axis);
      kept.push_back({a.x + (b.x - a.x).scaled(t), a.y + (b.y - a.y).scaled(t)});
    }
    points = std::move(kept);
  }
  return points;
}

// What the plan does not state has no place worth a mark on paper; it stays in the list. A line of sight
// begins outside the room and would leave the frame: it ends a little beyond the wall.
Report printedOnPlan(const Report& report, const Layout& layout) {
  Report printed = report;
  if (layout.room.empty()) return printed;
  Box around = boundsOf(layout.room);
  const Length beyond = Length::fromInches(12);
  around = {{around.low.x - beyond, around.low.y - beyond}, {around.high.x + beyond, around.high.y + beyond}};
  for (Finding& f : printed.findings) {
    if (f.outcome == Outcome::unknown) f.places.clear();
    for (Place& place : f.places) place.points = clippedTo(around, std::move(place.points));
    std::erase_if(f.places, [](const Place& place) {
      return place.points.size() < (place.kind == Place::Kind::point ? 1u : 2u);
    });
  }
  return printed;
}

bool isHatch(const DrawItem& item) { return item.role == Role::hatchShort || item.role == Role::hatchClose; }

// The circle's figure where it crosses least.
DisplayList circleLabel(const Circle& circle, const Clutter& clutter, const DrawStyle& style) {
  std::vector<TextPlace> places;
  for (const double up : {0.35, -0.35, 0.55, -0.55, 0.12, -0.12, 0.72, -0.72}) {
    for (const double aside : {0.0, 0.3, -0.3}) {
      TextPrim text;
      text.text = "\u2300 " + lengthText(circle.radius * 2, style.unit);
      text.height = style.mm.scaled(2.7);
      text.h = AnchorH::centre;
      text.v = AnchorV::middle;
      text.halo = true;
      text.at = {circle.center.x + circle.radius.scaled(aside), circle.center.y + circle.radius.scaled(up)};
      places.push_back({text});
    }
  }
  // Better no figure on the plan than one across another; the column states it too.
  const auto best = quietestText(clutter, places);
  return best ? DisplayList{{*best, Role::label, {}}} : DisplayList{};
}

DisplayList dimensionedList(const Layout& layout, const DrawStyle& style) {
  DisplayList list = drawPlan(layout, style);
  append(list, drawDimensions(layout, style));
  append(list, drawWallNames(layout, list, style));
  return list;
}

DisplayList findingsList(const Layout& layout, const Report& report, DrawStyle style) {
  const Circle& circle = report.figures.turning.largest;
  DisplayList list = drawClearZones(layout, report, style);
  if (circle.radius > Length{}) append(list, drawCircle(circle, "", style));
  style.labels = false;
  DisplayList plan = drawPlan(layout, style);

  Clutter clutter;
  clutter.add(list), clutter.add(plan);
  const DisplayList labels = drawLabels(layout, plan, style, true);
  clutter.add(labels);
  DisplayList found = drawFindingsAmid(printedOnPlan(report, layout), clutter, style);
  DisplayList marks;
  for (DrawItem& item : found) (isHatch(item) ? list : marks).push_back(std::move(item));
  clutter.add(marks);
  if (circle.radius > Length{}) append(marks, circleLabel(circle, clutter, style));
  append(list, std::move(plan));
  append(list, labels);
  append(list, std::move(marks));
  return list;
}

// Puts a plan list into the middle of the drawing field; remembers which roles it uses.
template <typename MakeList>
std::set<Role> drawInto(PaperPen& pen, const Layout& layout, const Field& field,
                        const std::optional<Scale>& scale, MakeList make) {
  std::set<Role> used;
  const Point target = pointFromMillimetres((field.x0 + field.x1) / 2, (field.y0 + field.y1) / 2);
  if (!scale || layout.walls.empty()) {
    const std::string words = layout.walls.empty()
                                  ? "No room is drawn in this option yet."
                                  : "The room is too large for this paper at any usual scale.";
    pen.text(target.x.millimetres(), target.y.millimetres(), words, 4, Role::title, false, AnchorH::centre);
    return used;
  }
  DrawStyle style;
  style.mm = Length::fromMillimetres(1 / scale->ratio);
  style.unit = layout.settings.unit;
  const DisplayList list = make(style);
  for (const DrawItem& item : list) used.insert(item.role);
  const Box box = boundsOf(list);
  const Point middle = midpoint(box.low, box.high);
  const Vector by{target.x - middle.x.scaled(scale->ratio), target.y - middle.y.scaled(scale->ratio)};
  pen.add(toPaper(list, scale->ratio, by));
  return used;
}

}  // namespace

PageContent planPage(const Layout& layout, const Report& report, Paper paper) {
  PageContent page{"Plan", chooseScale(layout, paper), {}};
  const PlanFields fields = planFields(paper);
  PaperPen pen;
  const std::set<Role> used = drawInto(pen, layout, fields.drawing, page.scale, [&](const DrawStyle& style) {
    return dimensionedList(layout, style);
  });
  pen.add(drawPlanColumn(layout, report, fields.column, page.scale, used));
  page.content = pen.take();
  return page;
}

PageContent findingsPlanPage(const Layout& layout, const Report& report, Paper paper) {
  PageContent page{"Findings plan", chooseScale(layout, paper), {}};
  const PlanFields fields = planFields(paper);
  PaperPen pen;
  const std::set<Role> used = drawInto(pen, layout, fields.drawing, page.scale, [&](const DrawStyle& style) {
    return findingsList(layout, report, style);
  });
  pen.add(drawFindingsColumn(layout, report, fields.column, page.scale, used));
  page.content = pen.take();
  return page;
}

}  // namespace elbowroom
