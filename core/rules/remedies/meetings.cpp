#include <algorithm>

#include "core/rules/remedies/trials.h"

namespace elbowroom::remedies {
namespace {

using namespace literals;

// Nobody gets past a thing that stands this near before a doorway.
constexpr Length kBeforeDoor = 6_in;

struct Patch {
  ElementId id;
  Length left, right, low, high;  // along its wall and above the floor
};

bool overlap(const Patch& a, const Patch& b) {
  const auto meet = [](Length a1, Length a2, Length b1, Length b2) {
    return a1 + kContact < b2 && b1 + kContact < a2;
  };
  return meet(a.left, a.right, b.left, b.right) && meet(a.low, a.high, b.low, b.high);
}

Patch patchOf(const WallItem& item) {
  return {item.id, item.along - item.width / 2, item.along + item.width / 2, item.bottom, item.bottom + item.height};
}

Patch patchOf(const PlacedOpening& o) {
  const Length half = openingWidth(o.opening) / 2;
  const Length low = o.opening.kind == OpeningKind::window ? o.opening.sill.value_or(Length{}) : Length{};
  return {o.opening.id, o.opening.along - half, o.opening.along + half, low, low + o.opening.height};
}

}  // namespace

std::set<std::pair<ElementId, ElementId>> meetings(const Layout& layout) {
  std::set<std::pair<ElementId, ElementId>> found;
  for (const PlacedOpening& o : layout.openings) {
    if (o.wall < 0) continue;
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(o.wall)];
    const Outline before{o.left, o.right, o.right + kBeforeDoor * wall.inward, o.left + kBeforeDoor * wall.inward};
    for (const PlacedFixture& f : layout.fixtures) {
      if (!f.solid || f.footprint.empty()) continue;
      if (o.opening.kind == OpeningKind::door) {
        if (gapBetween(before, f.footprint).overlap) found.insert({f.fixture.id, o.opening.id});
      } else if (const auto* on = std::get_if<OnWall>(&f.fixture.placement); on && on->wall == wall.id) {
        // What has no stated height, a shower for instance, is taken to reach the window.
        const Length half = f.fixture.width / 2;
        const Patch patch{f.fixture.id, on->along - half, on->along + half, {}, f.fixture.height.value_or(96_in)};
        if (overlap(patch, patchOf(o))) found.insert({f.fixture.id, o.opening.id});
      }
    }
  }
  const auto& items = layout.option.on_walls;
  for (std::size_t i = 0; i < items.size(); ++i) {
    const Patch patch = patchOf(items[i]);
    const auto wall = std::find_if(layout.walls.begin(), layout.walls.end(),
                                   [&](const WallFrame& w) { return w.id == items[i].wall; });
    if (wall == layout.walls.end()) continue;
    if (patch.left < -kContact || patch.right > wall->length + kContact || patch.low < -kContact ||
        (layout.option.room.ceiling.height && patch.high > *layout.option.room.ceiling.height + kContact))
      found.insert({items[i].id, wall->id});
    for (std::size_t j = 0; j < items.size(); ++j)
      if (j != i && items[j].wall == items[i].wall && overlap(patch, patchOf(items[j])))
        found.insert({items[i].id, items[j].id});
    for (const PlacedOpening& o : layout.openings)
      if (o.opening.wall == items[i].wall && overlap(patch, patchOf(o))) found.insert({items[i].id, o.opening.id});
  }
  return found;
}

}  // namespace elbowroom::remedies
