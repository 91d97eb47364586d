#include "core/base/length_text.h"
#include "core/drawing/dimensions.h"
#include "core/drawing/figures.h"

namespace elbowroom {

DisplayList drawPlan(const Layout& layout, const DrawStyle& style) {
  DisplayList list = drawWalls(layout, style);
  for (const PlacedFixture& fixture : layout.fixtures) append(list, drawFixture(fixture, style));
  for (const PlacedOpening& opening : layout.openings) append(list, drawOpening(layout, opening, style));
  for (const PlacedCeilingItem& item : layout.on_ceiling) append(list, drawCeilingItem(item));
  if (style.labels) append(list, drawLabels(layout, list, style));
  return list;
}

DisplayList drawCircle(Circle circle, const std::string& label, const DrawStyle& style) {
  DisplayList list;
  list.push_back({EllipsePrim{circle.center, circle.radius, circle.radius, {}, false}, Role::turning, {}});
  const Length arm = style.mm.scaled(1.5);
  const Point c = circle.center;
  list.push_back({LinePrim{{c.x - arm, c.y}, {c.x + arm, c.y}}, Role::centreline, {}});
  list.push_back({LinePrim{{c.x, c.y - arm}, {c.x, c.y + arm}}, Role::centreline, {}});
  if (label.empty()) return list;
  TextPrim text;
  text.text = label;
  text.height = style.mm.scaled(kDimensionTextMm);
  text.h = AnchorH::centre;
  text.at = {c.x, c.y + style.mm.scaled(2.2)};
  text.halo = true;
  list.push_back({text, Role::label, {}});
  return list;
}

}  // namespace elbowroom
