#include "core/plan/move_things.h"

#include <algorithm>

namespace elbowroom {

PutThings movedBy(const Layout& layout, const std::set<ElementId>& ids, Vector by,
                  std::optional<Length> step) {
  PutThings put;
  const auto alongBy = [&](int wall) {
    if (wall < 0) return Length{};
    const Length along = dot(by, layout.walls[static_cast<std::size_t>(wall)].along);
    if (!step || along == Length{}) return along;
    return along > Length{} ? *step : -*step;
  };
  // What is out of its wall already may come back.
  const auto within = [&](int wall, Length along, Length width, Length to) {
    const Length end = layout.walls[static_cast<std::size_t>(wall)].length;
    const Length low = std::min(width / 2, along), high = std::max(end - width / 2, along);
    return std::clamp(to, std::min(low, high), std::max(low, high));
  };
  for (const PlacedFixture& f : layout.fixtures) {
    if (!ids.contains(f.fixture.id)) continue;
    Fixture moved = f.fixture;
    if (auto* on_wall = std::get_if<OnWall>(&moved.placement)) on_wall->along += alongBy(f.wall);
    if (auto* standing = std::get_if<Standing>(&moved.placement)) standing->at = standing->at + by;
    if (!(moved == f.fixture)) put.fixtures.push_back(std::move(moved));
  }
  for (const PlacedOpening& o : layout.openings) {
    if (!ids.contains(o.opening.id) || o.wall < 0) continue;
    Opening moved = o.opening;
    moved.along = within(o.wall, moved.along, openingWidth(moved), moved.along + alongBy(o.wall));
    if (!(moved == o.opening)) put.openings.push_back(std::move(moved));
  }
  for (const PlacedWallItem& i : layout.on_walls) {
    if (!ids.contains(i.item.id) || i.wall < 0) continue;
    WallItem moved = i.item;
    moved.along = within(i.wall, moved.along, moved.width, moved.along + alongBy(i.wall));
    if (!(moved == i.item)) put.on_walls.push_back(std::move(moved));
  }
  for (const CeilingItem& i : layout.option.on_ceiling) {
    if (!ids.contains(i.id) || by == Vector{}) continue;
    put.on_ceiling.push_back(i);
    put.on_ceiling.back().at = i.at + by;
  }
  return put;
}

}  // namespace elbowroom
