#include <algorithm>

#include "core/plan/layout_parts.h"
#include "core/plan/snap.h"

namespace elbowroom {
namespace {

struct Others {
  std::vector<BoxedOutline> outlines;
  std::vector<ElementId> ids;
};

Others othersThan(const Layout& layout, const ElementId& id) {
  Others others;
  for (std::size_t i = 0; i < layout.solid.size(); ++i) {
    const Fixture& fixture = layout.fixtures[static_cast<std::size_t>(layout.solid[i])].fixture;
    if (fixture.id == id) continue;
    others.outlines.emplace_back(layout.solid_outlines[i], layout.solid_boxes[i]);
    others.ids.push_back(fixture.id);
  }
  return others;
}

ElementId wallAtPoint(const Layout& layout, Point p) {
  ElementId id;
  Length least;
  for (const WallFrame& wall : layout.walls) {
    const Length d = gapBetween(Segment{p, p}, Segment{wall.from, wall.to}).distance;
    if (id.empty() || d < least) least = d, id = wall.id;
  }
  return id;
}

std::vector<SideGap> gapsOfFixture(const Layout& layout, const PlacedFixture& f) {
  const Others others = othersThan(layout, f.fixture.id);
  const Direction right = f.facing.left();
  const Segment back{f.left_side.a, f.right_side.a};
  std::vector<std::pair<Segment, Direction>> sides{
      {f.left_side, right.opposite()}, {f.right_side, right}, {f.front, f.facing}};
  if (f.wall < 0) sides.push_back({back, f.facing.opposite()});
  std::vector<SideGap> gaps;
  for (const auto& [side, way] : sides) {
    const Ahead ahead = clearAhead(side, way, layout.room, others.outlines);
    const Point start = ahead.at - ahead.distance * way;
    const ElementId limit =
        ahead.hit < 0 ? wallAtPoint(layout, ahead.at) : others.ids[static_cast<std::size_t>(ahead.hit)];
    gaps.push_back({ahead.distance, {start, ahead.at}, limit, way.opposite()});
  }
  return gaps;
}

std::vector<SideGap> gapsOfOpening(const Layout& layout, const PlacedOpening& o) {
  if (o.wall < 0) return {};
  const Direction along = layout.walls[static_cast<std::size_t>(o.wall)].along;
  std::vector<SideGap> gaps;
  for (const Hand side : {Hand::left, Hand::right}) {
    const auto beside = layout_parts::wallBeside(layout.option, o.opening, side);
    const Point jamb = side == Hand::left ? o.left : o.right;
    const Direction way = side == Hand::left ? along.opposite() : along;
    gaps.push_back({beside.length, {jamb, jamb + beside.length * way}, beside.limit, way.opposite()});
  }
  return gaps;
}

}  // namespace

std::vector<SideGap> sideGaps(const Layout& layout, const ElementId& element) {
  if (layout.room.empty()) return {};
  for (const PlacedFixture& f : layout.fixtures)
    if (f.fixture.id == element && !f.footprint.empty()) return gapsOfFixture(layout, f);
  for (const PlacedOpening& o : layout.openings)
    if (o.opening.id == element) return gapsOfOpening(layout, o);
  return {};
}

std::optional<Placement> placeForGap(const Layout& layout, const ElementId& fixture, const SideGap& gap,
                                     Length wanted) {
  if (wanted < Length{}) return std::nullopt;
  const Vector move = (wanted - gap.distance) * gap.grow;
  for (const PlacedFixture& f : layout.fixtures) {
    if (f.fixture.id != fixture) continue;
    if (const auto* standing = std::get_if<Standing>(&f.fixture.placement))
      return Standing{standing->at + move, standing->turn};
    if (f.wall < 0) return std::nullopt;
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(f.wall)];
    OnWall on = std::get<OnWall>(f.fixture.placement);
    on.along += dot(move, wall.along);
    on.gap += dot(move, wall.inward);
    const Length half = f.fixture.width / 2;
    if (on.gap < Length{} || on.along < half || on.along > wall.length - half) return std::nullopt;
    return on;
  }
  return std::nullopt;
}

}  // namespace elbowroom
