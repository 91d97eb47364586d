#include "core/rules/checks/sides.h"

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

namespace {

// One measurement from the two sides of a fixture: the nearer one, with the other shown too when it is short.
Measurement nearerOf(const CheckInput& in, const PlacedFixture& f, Segment left_line, const Ahead& left,
                     Segment right_line, const Ahead& right) {
  const bool left_nearer = left.distance <= right.distance;
  const Ahead& near = left_nearer ? left : right;
  const Ahead& far = left_nearer ? right : left;
  const Length limit = limitOf(in);
  Measurement m{.subjects = {f.fixture.id, idOf(in.layout, near)}, .measured = near.distance};
  m.places =
      placesOf(left_nearer ? left_line : right_line, left_nearer ? leftOf(f) : rightOf(f), near, limit);
  if (far.distance < limit) {
    const auto more =
        placesOf(left_nearer ? right_line : left_line, left_nearer ? rightOf(f) : leftOf(f), far, limit);
    m.places.insert(m.places.end(), more.begin(), more.end());
  }
  return m;
}

template <typename Wanted>
std::vector<Measurement> centrelineSides(const CheckInput& in, Wanted wanted) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !wanted(f) || in.layout.room.empty()) continue;
    const Segment line = centreline(f);
    found.push_back(nearerOf(in, f, line, in.around[i].left, line, in.around[i].right));
  }
  return found;
}

Measurement basinCountUnknown(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id}, .places = {pointAt(f.center)}, .detail = "basins-not-stated", .fact = "basins"};
}

}  // namespace

std::vector<Measurement> toiletSides(const CheckInput& in) { return centrelineSides(in, isToilet); }

std::vector<Measurement> toiletSideWalls(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet || in.layout.room.empty()) continue;
    const Segment line = centreline(f);
    const auto& [left, right] = sideWalls(in, f);
    const bool left_nearer = left.distance <= right.distance;
    const Ahead& near = left_nearer ? left : right;
    found.push_back({.subjects = {f.fixture.id, idOf(in.layout, near)},
                     .measured = near.distance,
                     .places = placesOf(line, left_nearer ? leftOf(f) : rightOf(f), near, limitOf(in))});
  }
  return found;
}

std::vector<Measurement> basinSides(const CheckInput& in) {
  auto found = centrelineSides(in, [](const PlacedFixture& f) { return isBasin(f) && basinsOf(f) == 1; });
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isBasin(f) && !basinsOf(f)) found.push_back(basinCountUnknown(f));
  return found;
}

std::vector<Measurement> basinEdges(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::basin || in.layout.room.empty()) continue;
    const Obstacles near = obstaclesWhere(
        in.layout, [&](const PlacedFixture& o) { return &o != &f && (isBasin(o) || isBath(o)); });
    found.push_back(nearerOf(in, f, f.left_side, aheadOf(f.left_side, leftOf(f), in.layout, near),
                             f.right_side, aheadOf(f.right_side, rightOf(f), in.layout, near)));
  }
  return found;
}

}  // namespace elbowroom::checks
