#include "core/rules/checks/toilet_space.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

bool isWc(const PlacedFixture& f) { return counts(f) && f.fixture.kind == FixtureKind::toilet; }

// One measurement per toilet.
template <typename Make>
std::vector<Measurement> perToilet(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i)
    if (const PlacedFixture& f = in.layout.fixtures[i]; isWc(f)) found.push_back(make(f, in.around[i]));
  return found;
}

// From a line parallel to the centreline to the nearer or farther thing beside it.
Measurement beside(const CheckInput& in, const PlacedFixture& f, const Around& around, bool nearer, Length edge) {
  const bool left = (around.left.distance <= around.right.distance) == nearer;
  const Ahead& side = left ? around.left : around.right;
  const Direction way = left ? leftOf(f) : rightOf(f);
  const Segment line{f.back_center + edge * way, f.front_center + edge * way};
  Ahead from = side;
  from.distance = std::max(Length{}, side.distance - edge);
  return {.subjects = {f.fixture.id, idOf(in.layout, side)},
          .measured = from.distance,
          .places = placesOf(line, way, from, limitOf(in))};
}

// Whether the bar goes on the nearer side; 18 in there and 15 in on the other are asked for.
bool barOnNearer(const CheckInput& in, const Around& around) {
  using namespace literals;
  const bool left_nearer = around.left.distance <= around.right.distance;
  const Ahead& near = left_nearer ? around.left : around.right;
  const Ahead& far = left_nearer ? around.right : around.left;
  const auto bears = [&](const Ahead& side) {
    return side.hit < 0 || isBath(in.layout.fixtures[static_cast<std::size_t>(side.hit)]);
  };
  if (bears(near) != bears(far)) return bears(near);
  return std::min(near.distance - 18_in, far.distance - 15_in) >=
         std::min(far.distance - 18_in, near.distance - 15_in);
}

Length depthFrom(const PlacedFixture& wc, const PlacedFixture& o) {
  Length deepest;
  for (const Point& p : o.footprint) deepest = std::max(deepest, dot(p - wc.back_center, wc.facing));
  return deepest;
}

Measurement eitherSide(const CheckInput& in, const PlacedFixture& wc) {
  const Length deep = sizeOf(in, 0), most = sizeOf(in, 2), wide = limitOf(in);
  const auto clearWith = [&](const Obstacles& obstacles) {
    const Zone zone{wc.back_center, leftOf(wc), wc.facing, {}, {}, deep};
    const Room sides = roomFor(in.layout, obstacles, zone);
    const bool left_near = sides.left.distance <= sides.right.distance;
    const Length near = std::min(std::min(sides.left.distance, sides.right.distance), most);
    Zone asked = zone;
    (left_near ? asked.to_left : asked.to_right) = near;
    (left_near ? asked.to_right : asked.to_left) = wide - near;
    return std::pair{asked, roomFor(in.layout, obstacles, asked)};
  };
  const Obstacles& all = thingsAround(in, wc);
  auto [zone, room] = clearWith(all);
  std::string detail;
  if (room.lacks() > Length{} && wide - room.side_lacks >= sizeOf(in, 4) - kMetTolerance) {
    const Obstacles others = obstaclesWhere(in.layout, [&](const PlacedFixture& o) {
      return &o != &wc && !(o.wall == wc.wall && depthFrom(wc, o) <= sizeOf(in, 3) + kMetTolerance);
    });
    if (others.outlines.size() != all.outlines.size()) {
      std::tie(zone, room) = clearWith(others);
      detail = "vanity-beside-toilet";
    }
  }
  Measurement m = measuredIn(in.layout, zone, room, wc.fixture.id);
  m.detail = detail;
  if (room.lacks() <= Length{}) {  // the width is what the rule is about
    const Length there = room.left.distance + room.right.distance -
                         std::max(Length{}, std::min(room.left.distance, room.right.distance) - most);
    m.measured = there;
    m.limit = wide;
    m.places = {lineFrom(room.left.at, room.right.at)};
  }
  return m;
}

Measurement circulation(const CheckInput& in, const PlacedFixture& wc) {
  const Length wide = sizeOf(in, 0), allowed = sizeOf(in, 1), deep = limitOf(in);
  const Zone zone = cornerZone(in, wc, wide, deep);
  // From the front is across the far side of the space, opposite the rear wall.
  const Obstacles others = obstaclesWhere(in.layout, [&](const PlacedFixture& o) {
    if (&o == &wc) return false;
    if (!isBasin(o) || o.facing.x * wc.facing.x + o.facing.y * wc.facing.y > -0.999) return true;
    return dot(o.front_center - wc.back_center, wc.facing) < deep - allowed - kMetTolerance;
  });
  return measuredIn(in.layout, zone, roomFor(in.layout, others, zone), wc.fixture.id);
}

bool isCompartment(const CheckInput& in) { return yesNo(in.layout.option.room.facts, "compartment") == true; }

}  // namespace

std::vector<Measurement> toiletSpacesEitherSide(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around&) { return eitherSide(in, f); });
}
std::vector<Measurement> toiletNearSides(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around& a) { return beside(in, f, a, true, {}); });
}
std::vector<Measurement> toiletFarSides(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around& a) { return beside(in, f, a, false, {}); });
}
std::vector<Measurement> toiletGrabSides(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around& a) {
    return beside(in, f, a, barOnNearer(in, a), {});
  });
}
std::vector<Measurement> toiletOtherSides(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around& a) {
    return beside(in, f, a, !barOnNearer(in, a), {});
  });
}
std::vector<Measurement> toiletNearEdges(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around& a) {
    return beside(in, f, a, true, f.fixture.width / 2);
  });
}

std::vector<Measurement> toiletFarEdges(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around&) {
    const Obstacles& others = thingsAround(in, f);
    const Length deep = std::min(sizeOf(in, 0), f.fixture.depth);
    const Segment line{f.front_center - deep * f.facing, f.front_center};
    const Around around{aheadOf(line, leftOf(f), in.layout, others), aheadOf(line, rightOf(f), in.layout, others),
                        {}};
    return beside(in, f, around, false, f.fixture.width / 2);
  });
}

std::vector<Measurement> toiletProjections(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around&) {
    Length gap;
    if (const auto* on = std::get_if<OnWall>(&f.fixture.placement)) gap = on->gap;
    return Measurement{.subjects = {f.fixture.id},
                       .measured = f.fixture.depth + gap,
                       .places = {lineFrom(f.back_center - gap * f.facing, f.front_center)}};
  });
}

std::vector<Measurement> toiletCirculation(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, const Around&) { return circulation(in, f); });
}

std::vector<Measurement> compartmentWidths(const CheckInput& in) {
  if (!isCompartment(in)) return {};
  return perToilet(in, [&](const PlacedFixture& f, const Around&) {
    const auto& [left, right] = sideWalls(in, f);
    return Measurement{.subjects = {f.fixture.id},
                       .measured = left.distance + right.distance,
                       .places = {lineFrom(f.center + left.distance * leftOf(f),
                                           f.center + right.distance * rightOf(f))}};
  });
}

std::vector<Measurement> compartmentDepths(const CheckInput& in) {
  if (!isCompartment(in)) return {};
  return perToilet(in, [&](const PlacedFixture& f, const Around&) {
    const Segment back{f.left_side.a, f.right_side.a};
    const Ahead ahead = aheadOf(back, f.facing, in.layout, {});
    Measurement m{.subjects = {f.fixture.id},
                  .measured = ahead.distance,
                  .places = placesOf(back, f.facing, ahead, limitOf(in))};
    const auto hung = yesNo(f.fixture.facts, "wall_hung");
    if (hung == true) m.limit = sizeOf(in, 0);
    if (!hung && ahead.distance < limitOf(in) && ahead.distance >= sizeOf(in, 0)) {
      m.measured.reset();
      m.fact = "wall_hung";
    }
    return m;
  });
}

}  // namespace elbowroom::checks
