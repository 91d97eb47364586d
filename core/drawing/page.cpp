#include "core/drawing/page.h"

#include <algorithm>
#include <cmath>

#include "core/rules/text.h"

namespace elbowroom {
namespace {

constexpr double kCautionTextMm = 2.3;
constexpr double kCautionStepMm = 3.2;

std::vector<std::string> cautionOn(Paper paper) {
  std::string all;
  for (const std::string& line : cautionLines()) all += (all.empty() ? "" : " ") + line;
  return wrapMm(all, kCautionTextMm, frameOf(paper).width() - 4);
}

double cautionHeight(Paper paper) {
  return static_cast<double>(cautionOn(paper).size()) * kCautionStepMm + 2.2;
}

}  // namespace

Point pointFromMillimetres(double x, double y) {
  return {Length::fromMillimetres(x), Length::fromMillimetres(y)};
}

void PaperPen::line(Role role, double x0, double y0, double x1, double y1) {
  list_.push_back({LinePrim{pointFromMillimetres(x0, y0), pointFromMillimetres(x1, y1)}, role, {}});
}

void PaperPen::rectangle(Role role, double x0, double y0, double x1, double y1, bool filled) {
  list_.push_back({PolyPrim{{pointFromMillimetres(x0, y0), pointFromMillimetres(x1, y0),
                             pointFromMillimetres(x1, y1), pointFromMillimetres(x0, y1)},
                            true,
                            filled},
                   role,
                   {}});
}

void PaperPen::text(double x, double y, const std::string& words, double height, Role role, bool bold,
                    AnchorH h) {
  if (words.empty()) return;
  TextPrim text;
  text.at = pointFromMillimetres(x, y);
  text.text = words;
  text.height = Length::fromMillimetres(height);
  text.h = h;
  text.bold = bold;
  list_.push_back({text, role, {}});
}

double textWidthMm(const std::string& text, double height, bool bold) {
  return textWidth(text, Length::fromMillimetres(height), bold).millimetres();
}

std::vector<std::string> wrapMm(const std::string& text, double height, double width, bool bold) {
  return wrapText(text, Length::fromMillimetres(height), Length::fromMillimetres(width), bold);
}

std::string fitted(const std::string& text, double height, double width, bool bold) {
  if (textWidthMm(text, height, bold) <= width) return text;
  std::string cut = text;
  while (!cut.empty() && textWidthMm(cut + "\u2026", height, bold) > width) {
    do cut.pop_back();
    while (!cut.empty() && (static_cast<unsigned char>(cut.back()) & 0xc0) == 0x80);
    // A lead byte left without its tail goes too.
    if (!cut.empty() && static_cast<unsigned char>(cut.back()) >= 0xc0) cut.pop_back();
  }
  return cut + "\u2026";
}

Field frameOf(Paper paper) {
  const PaperSize size = sizeOf(paper);
  return {kFrameMm, kFrameMm, size.width.millimetres() - kFrameMm, size.height.millimetres() - kFrameMm};
}

Field bodyOf(Paper paper) {
  const Field f = frameOf(paper);
  return {f.x0, f.y0 + kTitleBlockMm + cautionHeight(paper), f.x1, f.y1};
}

PlanFields planFields(Paper paper) {
  const Field body = bodyOf(paper);
  const double column = body.width() > 350 ? 84 : 62;
  return {{body.x0 + 3, body.y0 + 3, body.x1 - column - 3, body.y1 - 3},
          {body.x1 - column, body.y0, body.x1, body.y1}};
}

DisplayList furnish(Paper paper, const TitleFacts& facts) {
  PaperPen pen;
  const Field f = frameOf(paper);
  pen.rectangle(Role::paper, f.x0, f.y0, f.x1, f.y1);
  const double top = f.y0 + kTitleBlockMm, caution_top = top + cautionHeight(paper);
  pen.line(Role::paper, f.x0, top, f.x1, top);
  pen.line(Role::tableLine, f.x0, caution_top, f.x1, caution_top);
  double y = caution_top - 3.4;
  for (const std::string& line : cautionOn(paper)) {
    pen.text(f.x0 + 2, y, line, kCautionTextMm, Role::note);
    y -= kCautionStepMm;
  }

  // Cells from the right: fixed widths; the title takes the rest.
  struct Cell {
    std::string caption, value, more;
    double width;
  };
  const std::vector<Cell> cells{
      {"Units", facts.units, "to finished faces", 42},
      {"Date", facts.date, "", 26},
      {"Scale", facts.scale.empty() ? "no scale" : facts.scale, "", 32},
      {"Sheet", facts.sheet, facts.number, 50},
  };
  double x = f.x1;
  for (const Cell& cell : cells) {
    x -= cell.width;
    pen.line(Role::tableLine, x, f.y0, x, top);
    pen.text(x + 2, top - 4, cell.caption, kCaptionTextMm, Role::note);
    double size = 3.2;  // a long name in smaller letters rather than cut
    while (size > 2.5 && textWidthMm(cell.value, size, true) > cell.width - 4) size -= 0.1;
    pen.text(x + 2, top - 9, fitted(cell.value, size, cell.width - 4, true), size, Role::title, true);
    pen.text(x + 2, top - 14, fitted(cell.more, 2.8, cell.width - 4), 2.8, Role::label);
  }
  const double room = x - f.x0 - 4;
  std::vector<std::string> title = wrapMm(facts.title, 4.4, room, true);
  const double size = title.size() == 1 ? 4.4 : 3.4;
  title = wrapMm(facts.title, size, room, true);
  if (title.size() <= 1) {
    pen.text(f.x0 + 2, top - 7, fitted(facts.title, size, room, true), size, Role::title, true);
    pen.text(f.x0 + 2, top - 13.5, fitted("Option: " + facts.option, 3.2, room), 3.2, Role::label);
  } else {
    std::string rest;
    for (std::size_t i = 1; i < title.size(); ++i) rest += (i > 1 ? " " : "") + title[i];
    pen.text(f.x0 + 2, top - 4.8, fitted(title[0], 3.4, room, true), 3.4, Role::title, true);
    pen.text(f.x0 + 2, top - 9.2, fitted(rest, 3.4, room, true), 3.4, Role::title, true);
    pen.text(f.x0 + 2, top - 14, fitted("Option: " + facts.option, 2.8, room), 2.8, Role::label);
  }
  return pen.take();
}

DisplayList toPaper(const DisplayList& plan, double ratio, Vector by) {
  const auto at = [&](Point p) { return Point{p.x.scaled(ratio) + by.dx, p.y.scaled(ratio) + by.dy}; };
  const auto all = [&](std::vector<Point>& points) {
    for (Point& p : points) p = at(p);
  };
  DisplayList paper = plan;
  for (DrawItem& item : paper) {
    if (auto* line = std::get_if<LinePrim>(&item.prim)) {
      line->a = at(line->a), line->b = at(line->b);
    } else if (auto* poly = std::get_if<PolyPrim>(&item.prim)) {
      all(poly->points);
    } else if (auto* arc = std::get_if<ArcPrim>(&item.prim)) {
      arc->center = at(arc->center), arc->radius = arc->radius.scaled(ratio);
    } else if (auto* ellipse = std::get_if<EllipsePrim>(&item.prim)) {
      ellipse->center = at(ellipse->center);
      ellipse->rx = ellipse->rx.scaled(ratio), ellipse->ry = ellipse->ry.scaled(ratio);
    } else if (auto* text = std::get_if<TextPrim>(&item.prim)) {
      text->at = at(text->at), text->height = text->height.scaled(ratio);
    } else if (auto* hatch = std::get_if<HatchPrim>(&item.prim)) {
      all(hatch->outline), hatch->spacing = hatch->spacing.scaled(ratio);
    }
  }
  return paper;
}

}  // namespace elbowroom
