// What several measures need: who is a subject, names of what was hit, and the places of a finding.
#pragma once

#include "core/plan/backed.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/check_input.h"

namespace elbowroom::checks {

inline bool counts(const PlacedFixture& f) { return f.fixture.status != Status::remove; }
inline bool counts(const PlacedWallItem& i) { return i.wall >= 0 && i.item.status != Status::remove; }
inline bool isToilet(const PlacedFixture& f) {  // the texts treat a bidet as they treat a toilet
  return f.fixture.kind == FixtureKind::toilet || f.fixture.kind == FixtureKind::bidet;
}
inline bool isBasin(const PlacedFixture& f) {
  return f.fixture.kind == FixtureKind::basin || f.fixture.kind == FixtureKind::vanity;
}
inline bool isBath(const PlacedFixture& f) {
  return f.fixture.kind == FixtureKind::bath || f.fixture.kind == FixtureKind::freestandingBath;
}
inline bool isShower(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::shower; }

// How many basins the fixture has; nullopt when the plan leaves it open (a vanity wide enough for two).
std::optional<int> basinsOf(const PlacedFixture&);

// The wall whose inside face carries this point (the nearest one); empty id without walls.
ElementId wallAt(const Layout&, Point);
// Id of what a ray met.
ElementId idOf(const Layout&, const Ahead&);

inline Place pointAt(Point p) { return {Place::Kind::point, {p}}; }
inline Place lineFrom(Point a, Point b) { return {Place::Kind::line, {a, b}}; }
// A thing on a wall: its middle on the plan, its centreline above the finished floor, its width along the wall.
inline Point middleOf(const PlacedWallItem& i) { return midpoint(i.left, i.right); }
inline Length centreOf(const PlacedWallItem& i) { return (i.bottom + i.top) / 2; }
inline Place placeOf(const PlacedWallItem& i) { return lineFrom(i.left, i.right); }
// Do two stretches of one line share a part?
inline bool meet(Length a0, Length a1, Length b0, Length b1) { return a0 < b1 && b0 < a1; }
// A mirror that one stands before, not one to make up at.
inline bool isMirror(const PlacedWallItem& i) {
  return is(i.item, WallUse::mirror) && i.item.kind != "makeup-mirror";
}
// A measurement for each thing on a wall that `wanted` accepts; `make` completes it.
template <typename Wanted, typename Make>
std::vector<Measurement> eachOnWall(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || !wanted(i)) continue;
    Measurement m{.subjects = {i.item.id}, .places = {placeOf(i)}};
    make(m, i);
    found.push_back(std::move(m));
  }
  return found;
}
// Does the wall hold that thing? Where the plan does not say, what is asked comes first: the wall, or the thing
// for its blocking.
void askBacked(Measurement&, const Wall& wall, const ElementId& thing, const Facts& facts, Pull);

// All solid things but this fixture.
const Obstacles& thingsAround(const CheckInput&, const PlacedFixture&);
// From the centreline of a fixture to the walls at both sides, over its whole depth, whatever stands between.
struct SideWalls {
  Ahead left, right;
};
const SideWalls& sideWalls(const CheckInput&, const PlacedFixture&);
// Index into Layout::fixtures; precondition: it is one of them.
std::int64_t indexOf(const Layout&, const PlacedFixture&);

std::vector<Place> across(const Circle&);  // a measured diameter
// The strip before `front` between the two distances straight ahead.
Place stripBetween(Segment front, Direction ahead, Length near, Length far);

// The limit of the asking rule as a length (0 when it is none).
Length limitOf(const CheckInput&);

// The measured line of a ray, from the side of `front` opposite the hit, and the missing strip up to the
// limit.
std::vector<Place> placesOf(Segment front, Direction ahead, const Ahead& found, Length limit);

}  // namespace elbowroom::checks
