#include "core/plan/wall_defaults.h"

#include <algorithm>

#include "core/geometry/measure.h"
#include "core/plan/bays.h"
#include "core/plan/catalogue.h"
#include "core/plan/snap_along.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kFlush = Length::nanometres(76'200'000);  // 3 in: nearer than that it stands at the wall

}  // namespace

ElementId showerAt(const Layout& layout, const ElementId& wall, Length along) {
  const WallFrame* frame = findWallFrame(layout, wall);
  if (!frame) return {};
  const PlacedFixture* best = nullptr;
  Length least;
  for (const PlacedFixture& f : layout.fixtures) {
    if (!holdsWater(f.fixture.kind) || f.fixture.status == Status::remove || f.footprint.empty()) continue;
    Length low = 1000000_in, high = -1000000_in, near = 1000000_in;
    for (Point p : f.footprint) {
      const Length s = dot(p - frame->from, frame->along);
      low = std::min(low, s), high = std::max(high, s);
      near = std::min(near, abs(dot(p - frame->from, frame->inward)));
    }
    if (near > kFlush || along < low || along > high) continue;
    const Length off = abs((low + high) / 2 - along);
    if (!best || off < least) best = &f, least = off;
  }
  return best ? best->fixture.id : ElementId{};
}

std::optional<Length> basinCentreAt(const Layout& layout, const ElementId& wall, Length along) {
  for (const PlacedFixture& f : layout.fixtures) {
    const bool basin = f.fixture.kind == FixtureKind::basin || f.fixture.kind == FixtureKind::vanity;
    if (!basin || f.wall < 0 || f.fixture.status == Status::remove) continue;
    const WallFrame& frame = layout.walls[static_cast<std::size_t>(f.wall)];
    const Length middle = dot(f.center - frame.from, frame.along), width = f.fixture.width;
    if (frame.id != wall || abs(along - middle) * 2 > width) continue;
    const int bowls = std::max(1, f.fixture.basins.value_or(1));
    Length best = middle;
    for (int i = 0; i < bowls; ++i) {
      const Length at = middle - width / 2 + width.scaled((2 * i + 1) / (2.0 * bowls));
      if (i == 0 || abs(at - along) < abs(best - along)) best = at;
    }
    return best;
  }
  return std::nullopt;
}

WallItem withDefaults(const Layout& layout, WallItem item) {
  const WallKindInfo* info = findWallKind(item.kind);
  if (!info) return item;
  if (info->of_shower && item.shower.empty()) item.shower = showerAt(layout, item.wall, item.along);
  const Wall* wall = findWall(layout.option, item.wall);
  if (wall && isRecessed(item) && !item.depth && depthOf(item) > studDepth(*wall)) {
    // No deeper than the studs by itself; a wall without any has no depth to give.
    if (const Length deep = studDepth(*wall); deep > Length{}) item.depth = deep;
  }
  if (info->use == WallUse::mirror && !info->for_person) {
    const WallFrame* frame = findWallFrame(layout, item.wall);
    const auto centre = basinCentreAt(layout, item.wall, item.along);
    const Length half = item.width / 2;
    if (frame && centre && *centre >= half && *centre <= frame->length - half) item.along = *centre;
  }
  return item;
}

SnappedCeiling snapCeilingItem(const Layout& layout, const CeilingItem& moving, Point wanted, const SnapRules& rules) {
  SnappedCeiling snapped{wanted, {}, {}};
  if (!rules.enabled) return snapped;
  std::vector<Point> centres;
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.status != Status::remove) centres.push_back(f.center);
  for (const PlacedOpening& o : layout.openings) centres.push_back(midpoint(o.left, o.right));
  for (const CeilingItem& other : layout.option.on_ceiling)
    if (other.id != moving.id) centres.push_back(other.at);
  if (!layout.room.empty()) {
    const Box box = boundsOf(layout.room);
    centres.push_back(midpoint(box.low, box.high));
  }
  const Point* by_x = nullptr;
  const Point* by_y = nullptr;
  for (const Point& p : centres) {
    if (abs(p.x - wanted.x) <= rules.reach && (!by_x || abs(p.x - wanted.x) < abs(by_x->x - wanted.x))) by_x = &p;
    if (abs(p.y - wanted.y) <= rules.reach && (!by_y || abs(p.y - wanted.y) < abs(by_y->y - wanted.y))) by_y = &p;
  }
  snapped.at.x = by_x ? by_x->x : snap_parts::roundTo(wanted.x, rules.step);
  snapped.at.y = by_y ? by_y->y : snap_parts::roundTo(wanted.y, rules.step);
  if (by_x) snapped.guide_x = Segment{*by_x, snapped.at};
  if (by_y) snapped.guide_y = Segment{*by_y, snapped.at};
  return snapped;
}

}  // namespace elbowroom
