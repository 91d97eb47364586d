#include <algorithm>

#include "core/rules/remedies/ways.h"

namespace elbowroom::remedies {
namespace {

using namespace literals;

WallItem moved(WallItem item) {
  if (item.status == Status::keep) item.status = Status::move;
  return item;
}

}  // namespace

void addWallItemWays(const Layout& layout, const WallItem& item, Ways& ways) {
  const WallFrame* wall = findWallFrame(layout, item.wall);
  if (wall == nullptr) return;
  const Length top = layout.option.room.ceiling.height.value_or(96_in) - item.height;
  const auto add = [&](Mend way, Length most, const ElementId& toward, const ElementId& behind, double effort,
                       auto change) {
    if (most <= kContact) return;
    Family f;
    f.move = {.way = way, .moved = item.id, .other = toward};
    f.behind = behind;
    f.most = most;
    f.effort = {0, effort};
    f.at = [item, change](Length by) -> Change {
      WallItem there = moved(item);
      change(there, by);
      return PutWallItems{{there}};
    };
    ways.families.push_back(std::move(f));
  };
  add(Mend::raise, top - item.bottom, {}, {}, 0.5, [](WallItem& i, Length by) { i.bottom += by; });
  add(Mend::lower, item.bottom, {}, {}, 0.5, [](WallItem& i, Length by) { i.bottom -= by; });
  const std::size_t at = static_cast<std::size_t>(wall - layout.walls.data()), count = layout.walls.size();
  const ElementId &before = layout.walls[(at + count - 1) % count].id, &after = layout.walls[(at + 1) % count].id;
  add(Mend::slide, item.along - item.width / 2, before, after, 0.6, [](WallItem& i, Length by) { i.along -= by; });
  add(Mend::slide, wall->length - item.along - item.width / 2, after, before, 0.6,
      [](WallItem& i, Length by) { i.along += by; });
}

void addCeilingItemWays(const Layout& layout, const CeilingItem& item, Ways& ways) {
  if (layout.room.empty() || !contains(layout.room, item.at)) return;
  for (const Direction way : {Direction{1, 0}, Direction{-1, 0}, Direction{0, 1}, Direction{0, -1}}) {
    const Vector half = 0.5_in * way.left();
    const Ahead ahead = clearAhead({item.at - half, item.at + half}, way, layout.room, {});
    ElementId toward;
    Length least;
    for (const WallFrame& wall : layout.walls) {
      const Length d = gapBetween(Segment{ahead.at, ahead.at}, Segment{wall.from, wall.to}).distance;
      if (toward.empty() || d < least) least = d, toward = wall.id;
    }
    if (ahead.distance <= kContact) continue;
    Family f;
    f.move = {.way = Mend::slide, .moved = item.id, .other = toward};
    f.most = ahead.distance;
    f.effort = {0, 0.6};
    f.at = [item, way](Length by) -> Change {
      CeilingItem there = item;
      there.at = there.at + by * way;
      return PutCeilingItems{{there}};
    };
    ways.families.push_back(std::move(f));
  }
}

}  // namespace elbowroom::remedies
