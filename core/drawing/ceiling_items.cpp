#include <algorithm>

#include "core/drawing/figures.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {

// Dashed, as everything above the plane that a plan is cut at.
DisplayList drawCeilingItem(const PlacedCeilingItem& placed) {
  const CeilingKindInfo* info = findCeilingKind(placed.item.kind);
  const double w = std::max(1.0, placed.width.inches() / 2), d = std::max(1.0, placed.depth.inches() / 2);
  const double r = std::min(w, d);
  Pen pen({placed.item.at, {1, 0}, {0, 1}}, placed.item.id);
  const Role role = Role::hidden;
  if (info && info->round)
    pen.ellipse(role, 0, 0, w, d);
  else
    pen.rectangle(role, -w, -d, w, d);
  if (placed.item.kind == "fan") {
    pen.circle(role, 0, 0, r * 0.25);
    for (const auto& [x, y] : {std::pair{1.0, 0.35}, {-0.35, 1.0}, {-1.0, -0.35}, {0.35, -1.0}})
      pen.line(role, x * r * 0.22, y * r * 0.22, x * r * 0.85, y * r * 0.85);
  } else if (placed.item.kind == "light") {
    pen.line(role, -w, 0, w, 0);
    pen.line(role, 0, -d, 0, d);
  } else if (placed.item.kind == "light-tube") {
    pen.ellipse(role, 0, 0, w * 0.7, d * 0.7);
  } else if (placed.item.kind == "shower-head") {
    pen.ellipse(role, 0, 0, w * 0.2, d * 0.2);
    for (const auto& [x, y] : {std::pair{0.55, 0.0}, {-0.55, 0.0}, {0.0, 0.55}, {0.0, -0.55}})
      pen.ellipse(role, x * w, y * d, w * 0.06, d * 0.06);
  }
  return pen.take();
}

std::string ceilingLabel(const PlacedCeilingItem& placed) {
  if (!placed.item.name.empty()) return placed.item.name;
  const CeilingKindInfo* info = findCeilingKind(placed.item.kind);
  return info ? std::string(info->short_label) : placed.item.kind;
}

}  // namespace elbowroom
