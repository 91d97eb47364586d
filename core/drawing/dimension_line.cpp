#include "core/drawing/dimensions.h"
#include "core/drawing/draw_plan.h"
#include "core/drawing/pen.h"

namespace elbowroom {

void drawTick(DisplayList& list, Point at, Direction along, const DrawStyle& style) {
  const Direction oblique = along.turned(Angle::fromDegrees(45));
  const Length half = style.mm.scaled(kTickMm / 2);
  list.push_back({LinePrim{at - half * oblique, at + half * oblique}, Role::dimension, {}});
}

DisplayList dimensionLine(Segment measured, Length offset, const std::string& text, const DrawStyle& style) {
  DisplayList list;
  const Direction along = Direction::between(measured.a, measured.b);
  const Direction side = along.left();
  const Point a = measured.a + offset * side, b = measured.b + offset * side;
  const Length gap = style.mm.scaled(1.0), past = style.mm.scaled(kExtensionPastMm);
  if (abs(offset) > gap) {
    const Direction outward = offset < Length{} ? side.opposite() : side;
    list.push_back({LinePrim{measured.a + gap * outward, a + past * outward}, Role::dimension, {}});
    list.push_back({LinePrim{measured.b + gap * outward, b + past * outward}, Role::dimension, {}});
  }
  list.push_back({LinePrim{a, b}, Role::dimension, {}});
  drawTick(list, a, along, style);
  drawTick(list, b, along, style);

  TextPrim label;
  label.text = text;
  label.height = style.mm.scaled(kDimensionTextMm);
  label.turn = readableTurn(along);
  label.h = AnchorH::centre;
  label.halo = true;
  label.at = midpoint(a, b) + style.mm.scaled(kTextRiseMm) * Direction::fromAngle(label.turn).left();
  list.push_back({label, Role::dimensionText, {}});
  return list;
}

}  // namespace elbowroom
