#include <algorithm>

#include "core/plan/layout_parts.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom::layout_parts {

PlacedWallItem placeWallItem(const std::vector<WallFrame>& walls, const WallItem& item) {
  PlacedWallItem placed;
  placed.item = item;
  placed.from = item.along - item.width / 2;
  placed.to = placed.from + item.width;
  placed.bottom = item.bottom;
  placed.top = item.bottom + item.height;
  placed.depth = depthOf(item);
  placed.recessed = isRecessed(item);
  const auto wall =
      std::find_if(walls.begin(), walls.end(), [&](const WallFrame& w) { return w.id == item.wall; });
  if (wall == walls.end()) return placed;
  placed.wall = static_cast<int>(wall - walls.begin());
  placed.left = wall->at(placed.from);
  placed.right = wall->at(placed.to);
  const Vector reach = placed.depth * (placed.recessed ? wall->inward.opposite() : wall->inward);
  placed.outline = {placed.left, placed.left + reach, placed.right + reach, placed.right};
  if (placed.recessed) std::reverse(placed.outline.begin(), placed.outline.end());
  return placed;
}

PlacedCeilingItem placeCeilingItem(const CeilingItem& item) {
  const CeilingKindInfo* info = findCeilingKind(item.kind);
  PlacedCeilingItem placed;
  placed.item = item;
  placed.width = item.width.value_or(info ? info->width : Length{});
  placed.depth = item.depth.value_or(info ? info->depth : Length{});
  const Point low = item.at - Vector{placed.width / 2, placed.depth / 2};
  placed.outline = {low, low + Vector{placed.width, {}}, low + Vector{placed.width, placed.depth},
                    low + Vector{{}, placed.depth}};
  return placed;
}

}  // namespace elbowroom::layout_parts
