#include "core/rules/checks/baths.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

bool isFree(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::freestandingBath; }

Measurement of(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}};
}

template <typename Wanted, typename Make>
std::vector<Measurement> eachBath(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBath(f) || !wanted(f)) continue;
    found.push_back(of(f));
    make(found.back(), f);
  }
  return found;
}

}  // namespace

std::vector<Measurement> bathWallGaps(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  return eachBath(in, isFree, [&](Measurement& m, const PlacedFixture& f) {
    const Gap gap = gapToBoundary(f.footprint, in.layout.room);
    m.measured = gap.distance;
    m.subjects.push_back(wallAt(in.layout, gap.to));
    m.places = {lineFrom(gap.from, gap.to)};
  });
}

std::vector<Measurement> bathSteps(const CheckInput& in) {
  const auto wanted = [](const PlacedFixture& f) {
    return isFree(f) || yesNo(f.fixture.facts, "steps_outside");
  };
  return eachBath(in, wanted, [&](Measurement& m, const PlacedFixture& f) {
    const auto steps = yesNo(f.fixture.facts, "steps_outside");
    const auto& items = in.layout.on_walls;
    if (!steps)
      m.fact = "steps_outside";
    else
      m.measured = !*steps || std::any_of(items.begin(), items.end(), [&](const PlacedWallItem& i) {
        return is(i.item, WallUse::grabBar) && i.item.status != Status::remove && i.wall >= 0 &&
               gapBetween(f.footprint, Outline{i.left, i.right}).distance <= sizeOf(in, 0);
      });
  });
}

std::vector<Measurement> bathsForTwo(const CheckInput& in) {
  const auto wanted = [](const PlacedFixture& f) { return yesNo(f.fixture.facts, "for_two") == true; };
  return eachBath(in, wanted, [](Measurement& m, const PlacedFixture& f) {
    m.measured = std::min(f.fixture.width, f.fixture.depth);
  });
}

std::vector<Measurement> bathControlHeights(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    const Fixture* bath = findFixture(in.layout.option, i.item.shower);
    const bool of_bath =
        bath && (bath->kind == FixtureKind::bath || bath->kind == FixtureKind::freestandingBath);
    if (i.item.kind != "control" || !of_bath || i.item.status == Status::remove) continue;
    Measurement m{.subjects = {i.item.id}, .measured = std::nullopt, .places = {lineFrom(i.left, i.right)}};
    if (bath->height) {
      m.measured = (i.bottom + i.top) / 2;
      m.limit = *bath->height;
    } else {
      m.subjects = {bath->id, i.item.id};
      m.fact = "height";
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
