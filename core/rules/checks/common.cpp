#include "core/rules/checks/common.h"

#include <cstdint>

namespace elbowroom::checks {

namespace {
using namespace literals;
// Narrowest vanity sold with two basins (comfort table, vanity widths).
constexpr Length kNarrowestDouble = 48_in;
}  // namespace

std::optional<int> basinsOf(const PlacedFixture& f) {
  if (f.fixture.basins) return f.fixture.basins;
  if (f.fixture.kind == FixtureKind::basin || f.fixture.width < kNarrowestDouble) return 1;
  return std::nullopt;
}

void askBacked(Measurement& m, const Wall& wall, const ElementId& thing, const Facts& facts, Pull pull) {
  const Held held = heldBy(wall, facts, pull);
  if (held.holds) {
    m.measured = *held.holds;
    return;
  }
  if (held.of_wall) m.subjects = {wall.id, thing};
  m.fact = held.fact;
}

ElementId wallAt(const Layout& layout, Point p) {
  ElementId nearest;
  Length best = Length::nanometres(INT64_MAX);
  for (const WallFrame& wall : layout.walls) {
    const Length gap = gapBetween(Segment{wall.from, wall.to}, Segment{p, p}).distance;
    if (gap < best) {
      best = gap;
      nearest = wall.id;
    }
  }
  return nearest;
}

ElementId idOf(const Layout& layout, const Ahead& found) {
  if (found.hit < 0) return wallAt(layout, found.at);
  return layout.fixtures[static_cast<std::size_t>(found.hit)].fixture.id;
}

std::int64_t indexOf(const Layout& layout, const PlacedFixture& f) { return &f - layout.fixtures.data(); }

const Obstacles& thingsAround(const CheckInput& in, const PlacedFixture& f) {
  return in.memo.once("things around", {indexOf(in.layout, f)}, [&] {
    return obstaclesWhere(in.layout, [&](const PlacedFixture& o) { return &o != &f; });
  });
}

const SideWalls& sideWalls(const CheckInput& in, const PlacedFixture& f) {
  return in.memo.once("side walls", {indexOf(in.layout, f)}, [&] {
    const Segment line = centreline(f);
    return SideWalls{aheadOf(line, leftOf(f), in.layout, {}), aheadOf(line, rightOf(f), in.layout, {})};
  });
}

std::vector<Place> across(const Circle& c) {
  const Vector reach{c.radius, Length{}};
  return {lineFrom(c.center - reach, c.center + reach)};
}

Place stripBetween(Segment front, Direction ahead, Length near, Length far) {
  return {Place::Kind::zone,
          {front.a + near * ahead, front.b + near * ahead, front.b + far * ahead, front.a + far * ahead}};
}

Length limitOf(const CheckInput& in) {
  if (in.rule == nullptr) return {};
  const auto* limit = std::get_if<Length>(&in.rule->limit);
  return limit == nullptr ? Length{} : *limit;
}

std::vector<Place> placesOf(Segment front, Direction ahead, const Ahead& found, Length limit) {
  std::vector<Place> places{lineFrom(found.at - found.distance * ahead, found.at)};
  if (found.distance < limit && front.a != front.b)
    places.push_back(stripBetween(front, ahead, found.distance, limit));
  return places;
}

}  // namespace elbowroom::checks
