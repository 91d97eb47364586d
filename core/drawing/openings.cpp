#include <algorithm>
#include <cmath>

#include "core/drawing/figures.h"

namespace elbowroom {
namespace {

constexpr double kLeafThickness = 1.375;  // in, when the plan does not say

double thicknessOf(const Opening& opening) {
  return opening.leaf_thickness ? opening.leaf_thickness->inches() : kLeafThickness;
}

// A leaf standing open by `opens`, with the arc of its edge; what it cannot reach is dashed.
void hingedLeaf(Pen& pen, const Leaf& leaf, double thickness, Angle opens, const DrawStyle& style) {
  const double sign = leaf.sweep < Angle{} ? -1 : 1;
  const Angle full = sign < 0 ? -leaf.sweep : leaf.sweep;
  const Angle turned = std::min(opens, full);
  const Angle signed_turn = sign < 0 ? -turned : turned;
  const Direction along = leaf.closed.turned(signed_turn);
  const Direction behind = sign < 0 ? along.left() : along.right();
  const Vector t = Length::fromInches(thickness) * behind;
  const Point tip = leaf.hinge + leaf.width * along;
  pen.add(Role::doorLeaf, PolyPrim{{leaf.hinge, tip, tip + t, leaf.hinge + t}, true, true});
  if (!style.swings) return;
  if (turned > Angle{}) {
    pen.add(Role::doorSwing, ArcPrim{leaf.hinge, leaf.width, leaf.closed.angle(), signed_turn});
  }
  if (turned < full) {
    const Angle rest = full - turned;
    pen.add(Role::hidden, ArcPrim{leaf.hinge, leaf.width, along.angle(), sign < 0 ? -rest : rest});
  }
}

// Two panels half folded: jamb, apex, track.
void bifoldPanels(Pen& pen, const WallFrame& wall, const PlacedOpening& placed) {
  const bool from_left = placed.opening.hinge == Hand::left;
  const bool in = placed.opening.swing == Swing::in;
  const double half = placed.opening.width.inches() / 2;
  const double jamb = dot((from_left ? placed.left : placed.right) - wall.from, wall.along).inches();
  const double side = from_left ? 1 : -1, out = in ? -1 : 1;
  const double face = in ? 0 : wall.thickness.inches();
  const double reach = half * 0.5, rise = half * std::sqrt(0.75);  // panels at 60 degrees
  pen.poly(Role::doorLeaf,
           {{jamb, face}, {jamb + side * reach, face + out * rise}, {jamb + side * 2 * reach, face}}, false);
}

void pocketLeaf(Pen& pen, const WallFrame& wall, const PlacedOpening& placed, double s0, double s1) {
  const WallRange cavity = rangeOn(wall, placed.cavity);
  const bool left = (cavity.s0 + cavity.s1) / 2 < (s0 + s1) / 2;
  const double t = (cavity.t0 + cavity.t1) / 2, half = thicknessOf(placed.opening) / 2;
  const double width = placed.opening.width.inches(), shown = width / 2;
  const double mouth = left ? s0 : s1, out = left ? 1 : -1;
  pen.rectangle(Role::doorLeaf, mouth, t - half, mouth + out * shown, t + half, 0, true);
  const double end =
      left ? std::max(cavity.s0, mouth - width + shown) : std::min(cavity.s1, mouth + width - shown);
  pen.rectangle(Role::hidden, mouth, t - half, end, t + half);
  // Parked wholly inside, so the length of wall it needs shows.
  const double parked = left ? std::max(cavity.s0, s0 - width) : std::min(cavity.s1, s1 + width);
  pen.line(Role::hidden, end, t, parked, t);
  pen.line(Role::hidden, parked, t - half, parked, t + half);
}

void arrow(Pen& pen, double s0, double s1, double t, double head) {
  const double back = s1 > s0 ? -head : head;
  pen.line(Role::doorSwing, s0, t, s1, t);
  pen.poly(Role::doorSwing, {{s1 + back, t + head * 0.4}, {s1, t}, {s1 + back, t - head * 0.4}}, false);
}

void slidingLeaf(Pen& pen, const WallFrame& wall, const PlacedOpening& placed, double s0, double s1,
                 const DrawStyle& style) {
  const WallRange park = rangeOn(wall, placed.park);
  const double thickness = std::max(park.t1 - park.t0, 0.5);
  if (!placed.park.empty())
    pen.rectangle(Role::doorLeaf, park.s0, park.t0, park.s1, park.t0 + thickness, 0, true);
  const bool left = (park.s0 + park.s1) / 2 < (s0 + s1) / 2;
  const double beyond = (placed.opening.width.inches() - (s1 - s0)) / 2;  // the closed leaf covers its jambs
  pen.rectangle(Role::hidden, s0 - beyond, park.t0, s1 + beyond, park.t0 + thickness);
  const double t = park.t0 - 1.6 * style.mm.inches();
  arrow(pen, left ? s1 : s0, left ? s0 : s1, t, 2 * style.mm.inches());
}

}  // namespace

DisplayList drawOpening(const Layout& layout, const PlacedOpening& placed, const DrawStyle& style) {
  if (placed.wall < 0 || placed.wall >= static_cast<int>(layout.walls.size())) return {};
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
  Pen pen(frameOf(wall), placed.opening.id);
  const double a = dot(placed.left - wall.from, wall.along).inches();
  const double b = dot(placed.right - wall.from, wall.along).inches();
  const double s0 = std::min(a, b), s1 = std::max(a, b), thickness = wall.thickness.inches();
  pen.line(Role::opening, s0, 0, s0, thickness);
  pen.line(Role::opening, s1, 0, s1, thickness);

  if (placed.opening.kind == OpeningKind::window) {
    for (const double t : {0.0, thickness / 2, thickness}) pen.line(Role::opening, s0, t, s1, t);
    return pen.take();
  }
  switch (placed.opening.action) {
    case DoorAction::hinged:
    case DoorAction::doubleLeaf: {
      const Angle opens = doorFigures(layout, placed).opens;
      for (const Leaf& leaf : placed.leaves) hingedLeaf(pen, leaf, thicknessOf(placed.opening), opens, style);
      break;
    }
    case DoorAction::pocket:
      pocketLeaf(pen, wall, placed, s0, s1);
      break;
    case DoorAction::surfaceSliding:
      slidingLeaf(pen, wall, placed, s0, s1, style);
      break;
    case DoorAction::bifold:
      bifoldPanels(pen, wall, placed);
      break;
    case DoorAction::cased:
      break;
  }
  if (placed.opening.action == DoorAction::cased) {
    pen.line(Role::hidden, s0, 0, s1, 0);
    pen.line(Role::hidden, s0, thickness, s1, thickness);
  } else {
    // The threshold line on the side away from the leaf.
    const bool in = placed.opening.swing == Swing::in;
    pen.line(Role::opening, s0, in ? thickness : 0, s1, in ? thickness : 0);
  }
  return pen.take();
}

}  // namespace elbowroom
