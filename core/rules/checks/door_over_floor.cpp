#include "core/rules/checks/door_over_floor.h"

#include <algorithm>

#include "core/geometry/beyond_sweep.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

std::optional<Outline> clearFloorOf(const CheckInput& in, const PlacedFixture& f) {
  if (!counts(f)) return std::nullopt;
  const Length half = f.fixture.width / 2;
  if (f.fixture.kind == FixtureKind::toilet) return cornerZone(in, f, 60_in, 56_in).outline();
  if (isBasin(f)) {
    const Point back = f.front_center - countedUnder(f) * f.facing;
    return Zone{back, leftOf(f), f.facing, 15_in, 15_in, 48_in}.outline();
  }
  if (isBath(f) || isShower(f)) return Zone{f.front_center, leftOf(f), f.facing, half, half, 30_in}.outline();
  return std::nullopt;
}

}  // namespace

std::vector<Measurement> doorsOverClearFloor(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  std::vector<std::pair<ElementId, Outline>> floors;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (auto outline = clearFloorOf(in, f)) floors.emplace_back(f.fixture.id, std::move(*outline));
  if (floors.empty()) return found;
  for (std::size_t i = 0; i < in.layout.openings.size(); ++i) {
    const PlacedOpening& o = in.layout.openings[i];
    if (!o.leaves_inside) continue;
    Measurement m{.subjects = {o.opening.id}, .measured = true, .places = {lineFrom(o.left, o.right)}};
    for (const auto& [id, outline] : floors) {
      const bool meets = std::any_of(o.leaves.begin(), o.leaves.end(), [&](const Leaf& leaf) {
        return gapToSector(leaf, outline).overlap;
      });
      if (!meets) continue;
      m.measured = false;
      m.subjects = {o.opening.id, id};
      m.places = {{Place::Kind::zone, outline}};
      break;
    }
    if (m.measured == Quantity(false) && in.rule != nullptr && in.rule->sizes.size() > 1) {
      const auto door = static_cast<std::int64_t>(i);
      const auto& beyond =
          in.memo.once("floor beyond door", {door, sizeOf(in, 1).nm(), sizeOf(in, 0).nm()}, [&] {
            const Placed near{in.figures.turning.largest.center, {}};
            return beyondSweep(in.layout.floor, o.leaves, sizeOf(in, 1), sizeOf(in, 0), near);
          });
      if (beyond) {
        m.measured = true;
        m.subjects = {o.opening.id};
        m.detail = "floor-beyond-door";
        m.places = {{Place::Kind::zone, rectangleOutline(sizeOf(in, 1), sizeOf(in, 0), *beyond)}};
      }
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
