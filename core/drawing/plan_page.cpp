#include <algorithm>
#include <cmath>
#include <set>

#include "core/base/length_text.h"
#include "core/drawing/dimensions.h"
#include "core/drawing/marks.h"
#include "core/drawing/page.h"
#include "core/drawing/plan_column.h"

namespace elbowroom {
namespace {

bool isHatch(const DrawItem& item) { return item.role == Role::hatchShort || item.role == Role::hatchClose; }

// The circle's figure where it crosses least.
DisplayList circleLabel(const Circle& circle, const Clutter& clutter, const DrawStyle& style) {
  TextPrim best;
  double best_cost = -1;
  for (const double up : {0.35, -0.35, 0.55, -0.55, 0.12, -0.12, 0.72, -0.72}) {
    for (const double aside : {0.0, 0.3, -0.3}) {
      TextPrim text;
      text.text = "\u2300 " + lengthText(circle.radius * 2, style.unit);
      text.height = style.mm.scaled(2.7);
      text.h = AnchorH::centre;
      text.v = AnchorV::middle;
      text.halo = true;
      text.at = {circle.center.x + circle.radius.scaled(aside), circle.center.y + circle.radius.scaled(up)};
      const double cost = clutter.costOf(textBounds(text));
      if (best_cost < 0 || cost < best_cost) best_cost = cost, best = text;
    }
  }
  // Better no figure on the plan than one across another; the column states it too.
  if (best_cost >= 1000) return {};
  return {{best, Role::label, {}}};
}

DisplayList planList(const Layout& layout, const Report& report, const DrawStyle& style) {
  const Circle& circle = report.figures.turning.largest;
  DisplayList under = drawClearZones(layout, report, style);
  if (circle.radius > Length{}) append(under, drawCircle(circle, "", style));
  DisplayList plan = drawPlan(layout, style), dimensions = drawDimensions(layout, style);

  Clutter clutter;
  clutter.add(under), clutter.add(plan), clutter.add(dimensions);
  DisplayList found = drawFindingsAmid(report, clutter, style);
  DisplayList marks;
  for (DrawItem& item : found) (isHatch(item) ? under : marks).push_back(item);
  if (circle.radius > Length{}) {
    Clutter all = clutter;
    all.add(marks);
    append(marks, circleLabel(circle, all, style));
  }
  DisplayList list = std::move(under);
  append(list, std::move(plan));
  append(list, std::move(dimensions));
  append(list, std::move(marks));
  return list;
}

}  // namespace

PageContent planPage(const Layout& layout, const Report& report, Paper paper, std::size_t sheets_before_findings) {
  PageContent page{"Plan", chooseScale(layout, paper), {}};
  const PlanFields fields = planFields(paper);
  PaperPen pen;
  std::set<Role> used;
  if (page.scale && !layout.walls.empty()) {
    DrawStyle style;
    style.mm = Length::fromMillimetres(1 / page.scale->ratio);
    style.unit = layout.settings.unit;
    const DisplayList list = planList(layout, report, style);
    for (const DrawItem& item : list) used.insert(item.role);
    // Centred by what the scale was chosen for; marks and labels only ever lie within.
    const Box box = boundsOf(list);
    const double ratio = page.scale->ratio;
    const Point middle = midpoint(box.low, box.high);
    const Field& f = fields.drawing;
    const Point target = pointFromMillimetres((f.x0 + f.x1) / 2, (f.y0 + f.y1) / 2);
    pen.add(toPaper(list, ratio, {target.x - middle.x.scaled(ratio), target.y - middle.y.scaled(ratio)}));
  } else {
    const Field& f = fields.drawing;
    const std::string words = layout.walls.empty() ? "No room is drawn in this option yet."
                                                   : "The room is too large for this paper at any usual scale.";
    pen.text((f.x0 + f.x1) / 2, (f.y0 + f.y1) / 2, words, 4, Role::title, false, AnchorH::centre);
  }
  pen.add(drawColumn(layout, report, fields.column, page.scale, used, sheets_before_findings));
  page.content = pen.take();
  return page;
}

}  // namespace elbowroom
