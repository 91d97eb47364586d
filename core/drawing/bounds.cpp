#include <algorithm>
#include <array>

#include "core/drawing/display_list.h"
#include "core/drawing/pen.h"

namespace elbowroom {
namespace {

struct Grow {
  Box box;
  bool any = false;
  void operator()(Point p) {
    if (!any) box = {p, p};
    any = true;
    box.low = {std::min(box.low.x, p.x), std::min(box.low.y, p.y)};
    box.high = {std::max(box.high.x, p.x), std::max(box.high.y, p.y)};
  }
  void operator()(const Box& b) { (*this)(b.low), (*this)(b.high); }
};

}  // namespace

Length baselineDrop(AnchorV v, Length height) {
  switch (v) {
    case AnchorV::base:
      return {};
    case AnchorV::middle:
      return height.scaled(kCapHeight / 2);
    case AnchorV::top:
      return height.scaled(kAscent);
  }
  return {};
}

std::array<Point, 4> textCorners(const TextPrim& text) {
  const Length width = textWidth(text.text, text.height, text.bold);
  const Length left = text.h == AnchorH::left ? Length{} : text.h == AnchorH::centre ? -(width / 2) : -width;
  const Length base = -baselineDrop(text.v, text.height);
  const Length low = base - text.height.scaled(kDescent), high = base + text.height.scaled(kAscent);
  const Direction u = Direction::fromAngle(text.turn), up = u.left();
  const auto at = [&](Length x, Length y) { return text.at + x * u + y * up; };
  return {at(left, low), at(left + width, low), at(left + width, high), at(left, high)};
}

Box textBounds(const TextPrim& text) {
  Grow grow;
  for (const Point p : textCorners(text)) grow(p);
  return grow.box;
}

Box boundsOf(const DisplayList& list) {
  Grow grow;
  for (const DrawItem& item : list) {
    if (const auto* line = std::get_if<LinePrim>(&item.prim)) {
      grow(line->a), grow(line->b);
    } else if (const auto* poly = std::get_if<PolyPrim>(&item.prim)) {
      for (const Point p : poly->points) grow(p);
    } else if (const auto* arc = std::get_if<ArcPrim>(&item.prim)) {
      for (const Point p : arcChords(*arc)) grow(p);
    } else if (const auto* ellipse = std::get_if<EllipsePrim>(&item.prim)) {
      for (const Point p : ellipseChords(*ellipse)) grow(p);
    } else if (const auto* text = std::get_if<TextPrim>(&item.prim)) {
      grow(textBounds(*text));
    } else {
      for (const Point p : std::get<HatchPrim>(item.prim).outline) grow(p);
    }
  }
  return grow.box;
}

}  // namespace elbowroom
