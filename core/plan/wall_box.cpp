#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/plan/ceiling.h"
#include "core/plan/snap_wall_item.h"

namespace elbowroom {
namespace {

WallBox boxOf(const WallItem& i) {
  return {i.id, i.wall, i.along - i.width / 2, i.along + i.width / 2, i.bottom, i.bottom + i.height};
}

WallBox boxOf(const Opening& o) {
  const Length half = openingWidth(o) / 2;
  const Length low = o.kind == OpeningKind::window ? o.sill.value_or(Length{}) : Length{};
  return {o.id, o.wall, o.along - half, o.along + half, low, low + o.height};
}

WallBox boxOf(const WallFrame& wall, const PlacedFixture& f) {
  const Length at = dot(f.center - wall.from, wall.along), half = f.fixture.width / 2;
  return {f.fixture.id, wall.id, at - half, at + half, Length{}, heightOf(f.fixture)};
}

}  // namespace

std::optional<WallBox> wallBoxOf(const Layout& layout, const ElementId& id) {
  if (const WallItem* item = findWallItem(layout.option, id)) return boxOf(*item);
  if (const Opening* opening = findOpening(layout.option, id)) return boxOf(*opening);
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.id == id && f.wall >= 0) return boxOf(layout.walls[static_cast<std::size_t>(f.wall)], f);
  return std::nullopt;
}

std::vector<WallBox> wallBoxesOn(const Layout& layout, const ElementId& wall) {
  std::vector<WallBox> boxes;
  for (const Opening& opening : layout.option.openings)
    if (opening.wall == wall) boxes.push_back(boxOf(opening));
  for (const PlacedFixture& f : layout.fixtures)
    if (f.wall >= 0 && f.fixture.status != Status::remove)
      if (const WallFrame& frame = layout.walls[static_cast<std::size_t>(f.wall)]; frame.id == wall)
        boxes.push_back(boxOf(frame, f));
  for (const WallItem& item : layout.option.on_walls)
    if (item.wall == wall && item.status != Status::remove) boxes.push_back(boxOf(item));
  return boxes;
}

std::optional<Length> ceilingOn(const Layout& layout, const ElementId& wall, Length along) {
  const WallFrame* frame = findWallFrame(layout, wall);
  if (!frame) return std::nullopt;
  return ceilingHeightAt(layout, frame->at(std::clamp(along, Length{}, frame->length)));
}

}  // namespace elbowroom
