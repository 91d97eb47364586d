#include "ui/canvas/hit.h"

#include <algorithm>

#include "core/drawing/marks.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

bool near(const Outline& outline, Point p, Length reach) {
  if (outline.size() < 3) return false;
  return contains(outline, p) || gapFromPoint(p, outline).distance <= reach;
}

bool within(const Outline& outline, const Box& box) {
  return !outline.empty() && std::all_of(outline.begin(), outline.end(), [&](Point p) {
    return p.x >= box.low.x && p.x <= box.high.x && p.y >= box.low.y && p.y <= box.high.y;
  });
}

// The rectangle round it, at least as large as a finger can hit.
Outline ceilingOutline(const CeilingItem& item) {
  const CeilingKindInfo* info = findCeilingKind(item.kind);
  const Length w = std::max(4_in, item.width.value_or(info ? info->width : 6_in)) / 2;
  const Length d = std::max(4_in, item.depth.value_or(info ? info->depth : 6_in)) / 2;
  return {{item.at.x - w, item.at.y - d}, {item.at.x + w, item.at.y - d},
          {item.at.x + w, item.at.y + d}, {item.at.x - w, item.at.y + d}};
}

Length distanceToPlace(const Place& place, Point p) {
  if (place.points.empty()) return 100000_in;
  if (place.kind == Place::Kind::point) return distance(p, place.points.front());
  if (place.kind == Place::Kind::line && place.points.size() >= 2)
    return gapBetween(Segment{p, p}, Segment{place.points[0], place.points[1]}).distance;
  if (place.points.size() < 3) return 100000_in;
  return contains(place.points, p) ? Length{} : gapFromPoint(p, place.points).distance;
}

}  // namespace

Hit hitAt(const Layout& layout, Point p, Length reach, bool corners) {
  if (corners)
    for (const WallFrame& wall : layout.walls)
      if (distance(wall.from, p) <= reach) return {Hit::Kind::corner, wall.id};

  for (const CeilingItem& item : layout.option.on_ceiling)
    if (contains(ceilingOutline(item), p)) return {Hit::Kind::ceilingItem, item.id};

  const PlacedFixture* best = nullptr;
  for (const PlacedFixture& fixture : layout.fixtures) {
    if (!contains(fixture.footprint, p)) continue;
    if (!best || areaOf(fixture.footprint) < areaOf(best->footprint)) best = &fixture;
  }
  if (best) return {Hit::Kind::fixture, best->fixture.id};

  for (const PlacedOpening& opening : layout.openings) {
    if (near(opening.in_wall, p, reach / 2)) return {Hit::Kind::opening, opening.opening.id};
    for (const Leaf& leaf : opening.leaves) {
      const Point tip = leaf.hinge + leaf.width * leaf.closed.turned(leaf.sweep);
      if (gapBetween(Segment{p, p}, Segment{leaf.hinge, tip}).distance <= reach)
        return {Hit::Kind::opening, opening.opening.id};
    }
    if (near(opening.park, p, Length{})) return {Hit::Kind::opening, opening.opening.id};
  }
  for (const WallFrame& wall : layout.walls)
    if (near(wall.body, p, reach / 2)) return {Hit::Kind::wall, wall.id};
  return {};
}

int findingAt(const Report& report, Point p, Length reach) {
  int best = -1;
  Length best_distance = reach;
  for (std::size_t i = 0; i < report.findings.size(); ++i) {
    const Finding& finding = report.findings[i];
    if (!isMarked(finding)) continue;
    for (const Place& place : finding.places) {
      // A line or mark is a finer target than a zone that covers much of the floor.
      const Length coarse = place.kind == Place::Kind::zone ? reach / 2 : Length{};
      const Length d = distanceToPlace(place, p) + coarse;
      if (d < best_distance) {
        best_distance = d;
        best = static_cast<int>(i);
      }
    }
  }
  return best;
}

std::vector<ElementId> elementsWithin(const Layout& layout, const Box& box) {
  std::vector<ElementId> ids;
  for (const PlacedFixture& fixture : layout.fixtures)
    if (within(fixture.footprint, box)) ids.push_back(fixture.fixture.id);
  for (const PlacedOpening& opening : layout.openings)
    if (within(opening.in_wall, box)) ids.push_back(opening.opening.id);
  for (const CeilingItem& item : layout.option.on_ceiling)
    if (within(ceilingOutline(item), box)) ids.push_back(item.id);
  return ids;
}

std::vector<ElementId> elementsInOrder(const Option& option) {
  std::vector<ElementId> order;
  for (const Wall& wall : option.room.walls) order.push_back(wall.id);
  for (const Opening& opening : option.openings) order.push_back(opening.id);
  for (const Fixture& fixture : option.fixtures) order.push_back(fixture.id);
  for (const CeilingItem& item : option.on_ceiling) order.push_back(item.id);
  return order;
}

std::optional<Point> turnerOf(const Layout& layout, const ElementId& id, Length off) {
  for (const PlacedFixture& placed : layout.fixtures)
    if (placed.fixture.id == id && std::holds_alternative<Standing>(placed.fixture.placement))
      return placed.front_center + off * placed.facing;
  return std::nullopt;
}

Outline outlineOf(const Layout& layout, const ElementId& id) {
  for (const PlacedFixture& fixture : layout.fixtures)
    if (fixture.fixture.id == id) return fixture.footprint;
  for (const PlacedOpening& opening : layout.openings)
    if (opening.opening.id == id) return opening.in_wall;
  for (const WallFrame& wall : layout.walls)
    if (wall.id == id) return wall.body;
  if (const CeilingItem* item = findCeilingItem(layout.option, id)) return ceilingOutline(*item);
  return {};
}

}  // namespace elbowroom::ui
