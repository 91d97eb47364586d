#include "core/rules/measures.h"

#include <algorithm>

#include "core/geometry/widest_ways.h"
#include "core/plan/layout_parts.h"
#include "core/plan/rough_opening.h"
#include "core/rules/straight_ways.h"

namespace elbowroom {
namespace {

using namespace literals;

// The far edge of an open leaf swings wider than the leaf (trade article on clashing doors, 5/8 to 1 1/4 in).
constexpr Length kHingeStandOff = 1_in;
// A wider circle counts as gained by knee space only beyond the search's own tolerance.
constexpr Length kNotice = Length::nanometres(508'000);  // 0.02 in

ElementId wallNear(const Layout& layout, Point p) {
  ElementId id;
  Length least = Length::nanometres(INT64_MAX);
  for (const WallFrame& wall : layout.walls) {
    const Length d = gapBetween(Segment{p, p}, Segment{wall.from, wall.to}).distance;
    if (d < least) least = d, id = wall.id;
  }
  return id;
}

struct Stop {
  Angle opened;
  ElementId hits;
  Point at;
};

std::optional<Stop> stopOf(const Layout& layout, const Leaf& leaf) {
  std::optional<Stop> stop;
  if (const auto touch = firstWallTouch(leaf, layout.room))
    stop = Stop{touch->opened, wallNear(layout, touch->at), touch->at};
  if (const auto touch = firstTouch(leaf, leaf.width + kHingeStandOff, layout.solid_outlines)) {
    if (!stop || touch->opened < stop->opened) {
      const int fixture = layout.solid[static_cast<std::size_t>(touch->obstacle)];
      stop = Stop{touch->opened, layout.fixtures[static_cast<std::size_t>(fixture)].fixture.id, touch->at};
    }
  }
  return stop;
}

}  // namespace

DoorFigures doorFigures(const Layout& layout, const PlacedOpening& placed) {
  const Opening& door = placed.opening;
  DoorFigures figures;
  figures.id = door.id;
  figures.action = door.action;
  if (!placed.leaves.empty()) figures.opens = 90_deg;
  for (const Leaf& leaf : placed.leaves) {
    Leaf panel = leaf;
    if (door.action == DoorAction::bifold) panel.width = door.width / 2;  // its leaves reach a little further
    figures.sweep = figures.sweep + sectorArea(panel);
    figures.square = figures.square + panel.width * panel.width;
    if (!placed.leaves_inside) continue;
    const std::optional<Stop> stop = stopOf(layout, leaf);
    if (!stop || stop->opened >= figures.opens) continue;
    figures.opens = stop->opened;
    figures.hits = stop->hits;
    figures.hits_at = stop->at;
  }
  if (placed.leaves_inside) figures.floor_taken = figures.sweep;
  figures.clear_opening = clearOpening(placed, figures.opens);
  if (door.action == DoorAction::pocket) figures.wall_needed = roughOpeningOf(door)->width;
  if (door.action == DoorAction::surfaceSliding)
    figures.wall_needed = sliderFor(openingWidth(door), kUsualOverlap).wall;
  if (figures.wall_needed > Length{} && placed.wall >= 0) {
    const Hand side = layout_parts::parkingSide(layout.option, door);
    figures.wall_there = figures.wall_needed + layout_parts::wallBeside(layout.option, door, side).length -
                         layout_parts::parkingLength(door);
  }
  figures.troubles = doorTroubles(layout, placed);
  return figures;
}

Figures figuresOf(const Layout& layout) {
  Figures figures;
  figures.room_area = layout.room_area;
  if (!layout.room.empty()) {
    figures.free_floor = freeArea(layout.room, layout.solid_outlines);
    figures.turning.largest = layout.floor.largestCircle();
    figures.turning.with_knees =
        layout.knee_space_counts ? layout.floor_with_knees.largestCircle() : figures.turning.largest;
    figures.turning.knee_space_used =
        2 * (figures.turning.with_knees.radius - figures.turning.largest.radius) > kNotice;
    if (!figures.turning.knee_space_used) figures.turning.with_knees = figures.turning.largest;
  }
  for (const PlacedOpening& opening : layout.openings)
    if (opening.opening.kind == OpeningKind::door) figures.doors.push_back(doorFigures(layout, opening));
  return figures;
}

std::vector<RouteFigure> routeFigures(const Layout& layout) {
  const std::optional<RouteEnds> ends = routeEnds(layout);
  if (!ends) return {};
  const std::vector<Route> routes = WidestWays(layout.floor).from(ends->start, ends->targets);
  std::vector<RouteFigure> figures;
  for (std::size_t i = 0; i < routes.size(); ++i)
    figures.push_back({layout.fixtures[static_cast<std::size_t>(layout.solid[i])].fixture.id, routes[i]});
  return figures;
}

std::optional<Placed> turningTFigure(const Layout& layout) {
  if (layout.room.empty()) return std::nullopt;
  return layout.floor.turningT();
}

}  // namespace elbowroom
