#include "core/plan/copies.h"

#include <algorithm>
#include <array>
#include <map>
#include <optional>

#include "core/geometry/measure.h"
#include "core/plan/snap_along.h"
#include "core/plan/snap_wall_item.h"

namespace elbowroom {
namespace {

using namespace literals;

struct Sizes {
  Length aside, gap;
};
Sizes sizesIn(Unit unit) { return unit == Unit::inches ? Sizes{6_in, 2_in} : Sizes{150_mm, 50_mm}; }

void placeFixtures(const Copies& copies, Option& scratch, PutThings& put, Length aside,
                   std::map<ElementId, ElementId>& copy_of) {
  for (const PlacedFixture& original : copies.fixtures) {
    Fixture copy = original.fixture;
    copy.id = freshId(scratch, copy.id.text);
    copy_of[original.fixture.id] = copy.id;
    if (auto* on_wall = std::get_if<OnWall>(&copy.placement); on_wall && findWall(scratch, on_wall->wall)) {
      on_wall->along += copy.width;
    } else if (on_wall) {
      copy.placement = Standing{original.center, original.facing.angle() + 90_deg};
    } else if (auto* standing = std::get_if<Standing>(&copy.placement)) {
      standing->at = standing->at + Vector{aside, -aside};
    }
    scratch.fixtures.push_back(copy);
    put.fixtures.push_back(std::move(copy));
  }
}

void placeOpenings(const Copies& copies, const Layout& into, const ElementId& onto, Option& scratch, PutThings& put) {
  if (into.walls.empty()) return;
  for (Opening copy : copies.openings) {
    if (!onto.empty()) copy.wall = onto;
    const WallFrame* wall = findWallFrame(into, copy.wall);
    if (!wall) wall = &into.walls.front();
    copy.wall = wall->id;
    snap_parts::AlongProblem problem{
        .wall_length = wall->length, .half = copy.width / 2, .blocked = {}, .neighbours = {}, .centres = {}};
    for (const Opening& there : scratch.openings)
      if (there.wall == wall->id)
        problem.blocked.push_back({there.along - there.width / 2, there.along + there.width / 2, there.id});
    const auto along = snap_parts::nearestAllowed(problem, copy.along);
    if (!along) continue;
    copy.along = *along;
    copy.id = freshId(scratch, copy.id.text);
    scratch.openings.push_back(copy);
    put.openings.push_back(std::move(copy));
  }
}

Length leftOf(const WallItem& i) { return i.along - i.width / 2; }
Length rightOf(const WallItem& i) { return leftOf(i) + i.width; }

// By how much things of one wall go along it, together: not at all where there is room, else beside what is
// there, else to the nearest free place. nullopt: this wall has no place for them.
std::optional<Length> shiftOf(const std::vector<WallItem>& items, const Layout& into, const WallFrame& wall,
                              Length gap) {
  Length left = leftOf(items.front()), right = rightOf(items.front());
  for (const WallItem& i : items) left = std::min(left, leftOf(i)), right = std::max(right, rightOf(i));
  if (right - left > wall.length) return std::nullopt;
  std::vector<WallBox> there = wallBoxesOn(into, wall.id);
  std::erase_if(there, [&](const WallBox& box) { return findFixture(into.option, box.id) != nullptr; });
  const auto fits = [&](Length by) {
    if (left + by < Length{} || right + by > wall.length) return false;
    return std::all_of(items.begin(), items.end(), [&](const WallItem& i) {
      for (const Length end : {leftOf(i) + by, rightOf(i) + by})
        if (const auto top = ceilingOn(into, wall.id, end); top && i.bottom + i.height > *top) return false;
      return std::none_of(there.begin(), there.end(), [&](const WallBox& box) {
        return box.left < rightOf(i) + by && leftOf(i) + by < box.right && box.low < i.bottom + i.height &&
               i.bottom < box.high;
      });
    });
  };
  const Length beside = right - left + gap;
  const Length within = std::max(std::min(Length{}, wall.length - right), -left);
  for (const Length by : {within, beside, -beside})
    if (fits(by)) return by;
  // Flush with an end of the wall or with an edge of what is there.
  std::vector<Length> nearest{-left, wall.length - right};
  for (const WallBox& box : there)
    for (const WallItem& i : items)
      for (const Length by : {box.right - leftOf(i), box.left - rightOf(i)}) nearest.push_back(by);
  std::stable_sort(nearest.begin(), nearest.end(), [](Length a, Length b) { return abs(a) < abs(b); });
  const auto found = std::find_if(nearest.begin(), nearest.end(), fits);
  return found == nearest.end() ? std::nullopt : std::optional(*found);
}

void placeOnWalls(const Copies& copies, const Layout& into, const ElementId& onto, Option& scratch,
                  PutThings& put, Length gap, const std::map<ElementId, ElementId>& copy_of) {
  if (into.walls.empty()) return;
  std::map<ElementId, std::vector<WallItem>> by_wall;
  for (WallItem copy : copies.on_walls) {
    if (!onto.empty()) copy.wall = onto;
    if (!findWallFrame(into, copy.wall)) copy.wall = into.walls.front().id;
    by_wall[copy.wall].push_back(std::move(copy));
  }
  for (auto& [wall, items] : by_wall) {
    const WallFrame& frame = *findWallFrame(into, wall);
    const std::optional<Length> by = shiftOf(items, into, frame, gap);
    if (!by) continue;
    for (WallItem& copy : items) {
      copy.id = freshId(scratch, copy.id.text);
      copy.along += *by;
      if (const auto same = copy_of.find(copy.shower); same != copy_of.end()) copy.shower = same->second;
      if (!findFixture(scratch, copy.shower)) copy.shower = {};
      scratch.on_walls.push_back(copy);
      put.on_walls.push_back(std::move(copy));
    }
  }
}

void placeOnCeiling(const Copies& copies, const Layout& into, Option& scratch, PutThings& put, Length aside) {
  for (CeilingItem copy : copies.on_ceiling) {
    copy.id = freshId(scratch, copy.id.text);
    const Point from = copy.at;
    copy.at = from + Vector{aside, -aside};
    for (const Vector by : {Vector{aside, -aside}, {-aside, -aside}, {-aside, aside}, {aside, aside}})
      if (!into.room.empty() && contains(into.room, from + by)) {
        copy.at = from + by;
        break;
      }
    scratch.on_ceiling.push_back(copy);
    put.on_ceiling.push_back(std::move(copy));
  }
}

}  // namespace

Copies copiesOf(const Layout& layout, std::span<const ElementId> ids) {
  const auto chosen = [&](const ElementId& id) { return std::find(ids.begin(), ids.end(), id) != ids.end(); };
  Copies copies;
  for (const PlacedFixture& f : layout.fixtures)
    if (chosen(f.fixture.id)) copies.fixtures.push_back(f);
  for (const Opening& o : layout.option.openings)
    if (chosen(o.id)) copies.openings.push_back(o);
  for (const WallItem& i : layout.option.on_walls)
    if (chosen(i.id)) copies.on_walls.push_back(i);
  for (const CeilingItem& i : layout.option.on_ceiling)
    if (chosen(i.id)) copies.on_ceiling.push_back(i);
  return copies;
}

PutThings putDown(const Copies& copies, const Layout& into, const ElementId& wall) {
  PutThings put;
  Option scratch = into.option;  // fresh ids must not repeat among the copies
  const Sizes sizes = sizesIn(into.settings.unit);
  std::map<ElementId, ElementId> copy_of;
  placeFixtures(copies, scratch, put, sizes.aside, copy_of);
  placeOpenings(copies, into, wall, scratch, put);
  placeOnWalls(copies, into, wall, scratch, put, sizes.gap, copy_of);
  placeOnCeiling(copies, into, scratch, put, sizes.aside);
  return put;
}

}  // namespace elbowroom
