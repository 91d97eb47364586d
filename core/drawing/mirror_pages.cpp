// The cut sheet of a mirror: what the glazier is given.
#include <algorithm>
#include <cmath>

#include "core/drawing/dimension_rows.h"
#include "core/drawing/page.h"
#include "core/drawing/sheet_text.h"
#include "core/rules/text.h"
#include "core/works/mirror_order.h"

namespace elbowroom {
namespace {

std::string holeSize(const MirrorHole& hole, Unit unit) {
  if (hole.diameter > Length{}) return "\u2300 " + sheetText(hole.diameter, unit);
  return sheetText(hole.width, hole.height, unit);
}

std::string troubleWords(const MirrorTrouble& t, const Option& option, Unit unit) {
  const std::string what = subjectName(option, t.item), measured = sheetText(t.measured, unit),
                    needed = sheetText(t.needed, unit);
  switch (t.kind) {
    case MirrorTroubleKind::nearEdge:
      return what + ": " + measured + " of glass to the edge, needs " + needed + ".";
    case MirrorTroubleKind::nearCorner:
      return what + ": " + measured + " of glass to a corner, needs " + needed + ".";
    case MirrorTroubleKind::nearHole:
      return what + ": " + measured + " of glass to the hole of " + subjectName(option, t.other) +
             ", needs " + needed + ".";
    case MirrorTroubleKind::holeOverEdge:
      return what + ": its hole runs " + sheetText(abs(t.measured), unit) + " past the edge.";
    case MirrorTroubleKind::itemOverEdge:
      return what + ": hangs " + measured + " over the edge, half on the wall.";
    case MirrorTroubleKind::holeTooLarge:
      return what + ": its hole of " + measured + " is wider than a third of the smaller side, " + needed +
             ".";
  }
  return {};
}

// Each hole from the lower left corner, the farthest outermost; then the whole.
DimensionGroup strings(Direction along, Direction outward, std::vector<double> at, double whole) {
  DimensionGroup group;
  group.along = along, group.outward = outward, group.square = true;
  std::sort(at.begin(), at.end());
  at.erase(std::unique(at.begin(), at.end(), [](double a, double b) { return b - a < 1.0 / 32; }), at.end());
  int rank = 0;
  for (const double s : at) {
    if (s < 1.0 / 16 || s > whole - 1.0 / 16 || rank == 6) continue;  // the list has them all
    group.rows.push_back({{0, s}, {0, 0}, {false, true}, rank++});
  }
  group.rows.push_back({{0, whole}, {0, 0}, {false, false}, rank});
  return group;
}

// Turned round so that the string stands below: its stations run to the left.
DimensionGroup mirrored(DimensionGroup group) {
  for (DimensionRow& row : group.rows) {
    for (double& s : row.stations) s = -s;
    std::reverse(row.stations.begin(), row.stations.end());
    std::reverse(row.centreline.begin(), row.centreline.end());
  }
  return group;
}

DisplayList drawMirror(const MirrorOrder& order, const DrawStyle& style) {
  const double w = order.width.inches(), h = order.height.inches(), mm = style.mm.inches();
  Pen pen({{}, {1, 0}, {0, 1}}, order.mirror);
  pen.rectangle(Role::fixture, 0, 0, w, h);
  const double u = std::min(w, h) * 0.06;
  for (const double at : {0.0, u})
    pen.line(Role::fixtureDetail, w * 0.25 - u + at, h * 0.22 - at, w * 0.25 + u * 0.4 + at,
             h * 0.22 + u * 1.4 - at);
  DisplayList numbers;
  std::vector<double> across, up;
  for (std::size_t i = 0; i < order.holes.size(); ++i) {
    const MirrorHole& hole = order.holes[i];
    const double x = hole.from_left.inches(), y = hole.from_bottom.inches();
    const double rx = hole.width.inches() / 2, ry = hole.height.inches() / 2;
    if (hole.diameter > Length{})
      pen.ellipse(Role::fixture, x, y, rx, ry);
    else
      pen.rectangle(Role::fixture, x - rx, y - ry, x + rx, y + ry);
    pen.line(Role::centreline, x - rx - 2 * mm, y, x + rx + 2 * mm, y);
    pen.line(Role::centreline, x, y - ry - 2 * mm, x, y + ry + 2 * mm);
    across.push_back(x), up.push_back(y);
    TextPrim text;
    text.text = std::to_string(i + 1);
    text.height = style.mm.scaled(3);
    text.bold = text.halo = true;
    text.v = AnchorV::base;
    const bool right = x + rx + 6 * mm < w;
    text.h = right ? AnchorH::left : AnchorH::right;
    text.at = {Length::fromInches(x + (right ? 1 : -1) * (rx + 1.2 * mm)), Length::fromInches(y + 1.2 * mm)};
    numbers.push_back({text, Role::label, hole.item});
  }
  DisplayList list = pen.take();
  append(list, drawDimensionGroups(
                   {mirrored(strings({-1, 0}, {0, -1}, across, w)), strings({0, 1}, {-1, 0}, up, h)}, style));
  append(list, std::move(numbers));
  return list;
}

class Column {
 public:
  explicit Column(const Field& field) : f_(field), y_(field.y1 - 2) {
    pen_.line(Role::tableLine, f_.x0, f_.y0, f_.x0, f_.y1);
  }
  void heading(const std::string& words) {
    if (y_ - 12 < f_.y0) return;
    y_ -= 6;
    pen_.text(f_.x0 + 3, y_, fitted(words, 3.2, f_.width() - 6, true), 3.2, Role::title, true);
    y_ -= 1;
  }
  void words(const std::string& text, bool bold = false) {
    for (const std::string& line : wrapMm(text, kNoteTextMm, f_.width() - 6, bold)) {
      if (y_ - kLineStepMm < f_.y0 + 1) return;
      y_ -= kLineStepMm;
      pen_.text(f_.x0 + 3, y_, line, kNoteTextMm, Role::label, bold);
    }
    y_ -= 0.8;
  }
  DisplayList take() { return pen_.take(); }

 private:
  Field f_;
  double y_;
  PaperPen pen_;
};

}  // namespace

std::vector<PageContent> mirrorPages(const Layout& layout, Paper paper) {
  std::vector<PageContent> pages;
  const PlanFields fields = planFields(paper);
  const Field& field = fields.drawing;
  const Unit unit = layout.settings.unit;
  for (const MirrorOrder& order : mirrorOrders(layout)) {
    DisplayList list;
    Box box;
    const auto scale = firstScale(
        unit,
        [&](const Scale& s) {
          DrawStyle style;
          style.mm = Length::fromMillimetres(1 / s.ratio);
          style.unit = unit;
          list = drawMirror(order, style);
          box = boundsOf(list);
          return (box.high.x - box.low.x).scaled(s.ratio).millimetres() <= field.width() &&
                 (box.high.y - box.low.y).scaled(s.ratio).millimetres() <= field.height();
        },
        true);
    const std::string name = subjectName(layout.option, order.mirror);
    PaperPen pen;
    if (scale) {
      const Point middle = midpoint(box.low, box.high);
      const Point target = pointFromMillimetres((field.x0 + field.x1) / 2, (field.y0 + field.y1) / 2);
      pen.add(toPaper(list, scale->ratio,
                      {target.x - middle.x.scaled(scale->ratio), target.y - middle.y.scaled(scale->ratio)}));
    }
    Column column(fields.column);
    column.heading(name);
    column.words(sheetText(order.width, unit) + " wide \u00d7 " + sheetText(order.height, unit) + " high, " +
                     sheetText(order.thickness, unit) + " thick",
                 true);
    column.words("On " + subjectName(layout.option, order.wall) + ", seen from the room.");
    column.heading("Holes");
    if (order.holes.empty()) column.words("None.");
    for (std::size_t i = 0; i < order.holes.size(); ++i) {
      const MirrorHole& hole = order.holes[i];
      column.words(std::to_string(i + 1) + "  " + subjectName(layout.option, hole.item), true);
      column.words(holeSize(hole, unit) + ", centre " + sheetText(hole.from_left, unit) +
                   " from the left edge, " + sheetText(hole.from_bottom, unit) + " from the lower edge");
    }
    if (!order.troubles.empty()) column.heading("To be settled before cutting");
    for (const MirrorTrouble& trouble : order.troubles)
      column.words(troubleWords(trouble, layout.option, unit));
    column.heading("Before it is ordered");
    column.words(std::string(order.holes.empty() ? "The wall is" : "The boxes are set in the wall and") +
                 " measured on site before this mirror is ordered; written figures are those of the plan.");
    if (!order.holes.empty())
      column.words(
          "Glass to edges and between holes by a fabricator's table for toughened glass: to an edge " +
          sheetText(glassToEdge(order.thickness), unit) + ", between holes " +
          sheetText(glassBetweenHoles(order.thickness), unit) + ", to a corner " +
          sheetText(glassToCorner(order.thickness), unit) + ". The maker's own limits go before it.");
    pen.add(column.take());
    pages.push_back({name == "Mirror" ? "Mirror order" : "Mirror order: " + name, scale, pen.take()});
  }
  return pages;
}

}  // namespace elbowroom
