#include "core/rules/checks/access_room.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/room.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// Of the distances between a wall and what wall stands across from it the one that is better than all others.
template <typename Better>
std::vector<Measurement> spanWhere(const CheckInput& in, Better better) {
  std::optional<Measurement> best;
  for (const WallFrame& wall : in.layout.walls) {
    const Ahead ahead = aheadOf({wall.from, wall.to}, wall.inward, in.layout, {});
    if (best && !better(ahead.distance, std::get<Length>(*best->measured))) continue;
    best = Measurement{.subjects = {wall.id},
                       .measured = ahead.distance,
                       .places = {lineFrom(ahead.at - ahead.distance * wall.inward, ahead.at)}};
  }
  return best ? std::vector{*best} : std::vector<Measurement>{};
}

// A T that every one of these holds: their bars laid one on the other, by the outer side.
TurningShape commonOf(const std::vector<TurningShape>& shapes) {
  TurningShape common = shapes.front();
  for (const TurningShape& s : shapes) {
    common.across = std::min(common.across, s.across);
    common.along = std::min(common.along, s.along);
    common.bar_width = std::min(common.bar_width, s.bar_width);
    common.base_width = std::min(common.base_width, s.base_width);
    common.chamfer = std::min(common.chamfer, s.chamfer);
  }
  return common;
}

}  // namespace

std::vector<Measurement> roomSpans(const CheckInput& in) {
  return spanWhere(in, [](Length a, Length b) { return a < b; });
}
std::vector<Measurement> roomLengths(const CheckInput& in) {
  return spanWhere(in, [](Length a, Length b) { return a > b; });
}

std::vector<Measurement> circleUnderBasins(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const Length most = sizeOf(in, 0);
  const auto mayPass = [](const PlacedFixture& f) { return isBasin(f) && countedUnder(f) > Length{}; };
  Circle circle = in.figures.turning.largest;
  // Knee space helps only where it helps without a cap, and only a circle that is short without it asks for it.
  const bool helps = in.figures.turning.knee_space_used && circle.radius * 2 < limitOf(in);
  if (helps) {
    std::vector<Outline> blocks;
    for (const int i : in.layout.solid) {
      const PlacedFixture& f = in.layout.fixtures[static_cast<std::size_t>(i)];
      blocks.push_back(mayPass(f) ? behindFront(f, std::min(most, countedUnder(f))) : f.footprint);
    }
    circle = std::max(circle, FreeFloor(in.layout.room, blocks).largestCircle(),
                      [](const Circle& a, const Circle& b) { return a.radius < b.radius; });
  }
  Measurement m{
      .subjects = {},
      .measured = circle.radius * 2,
      .places = across(circle),
      .detail = helps && circle.radius > in.figures.turning.largest.radius ? "knee-space-used" : ""};
  if (circle.radius * 2 > limitOf(in) - kMetTolerance) return {m};
  std::vector<TurningShape> shapes;
  for (std::size_t i = 1; i + 4 < in.rule->sizes.size(); i += 5)
    shapes.push_back(
        {sizeOf(in, i), sizeOf(in, i + 1), sizeOf(in, i + 2), sizeOf(in, i + 3), sizeOf(in, i + 4)});
  // Where what they have in common has no place, none of them is looked for.
  if (shapes.size() > 1 && !turningTIn(in, commonOf(shapes), false)) return {m};
  for (const TurningShape& shape : shapes)
    if (turnByT(in, shape, false, m)) break;
  return {m};
}

std::vector<Measurement> turningRectangles(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  const Circle& circle = in.figures.turning.largest;
  const Length along = sizeOf(in, 0), wide = sizeOf(in, 1);
  Measurement m{.subjects = {}, .measured = false, .places = across(circle)};
  if (circle.radius * 2 < wide - kContact * 4) return {m};  // it holds a circle as wide as itself
  if (const auto at = in.layout.floor.nearestRectangleAnyTurn(along, wide, {circle.center, {}})) {
    m.measured = true;
    m.places = {{Place::Kind::zone, rectangleOutline(along, wide, *at)}};
  }
  return {m};
}

std::vector<Measurement> basinSideGaps(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !isBasin(f)) continue;
    const Around& around = in.around[i];
    const bool left = around.left.distance <= around.right.distance;
    Ahead near = left ? around.left : around.right;
    near.distance = std::max(Length{}, near.distance - f.fixture.width / 2);
    found.push_back({.subjects = {f.fixture.id, idOf(in.layout, near)},
                     .measured = near.distance,
                     .places = placesOf(left ? f.left_side : f.right_side, left ? leftOf(f) : rightOf(f), near,
                                        limitOf(in))});
  }
  return found;
}

}  // namespace elbowroom::checks
