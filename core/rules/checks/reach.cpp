#include "core/rules/checks/reach.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

template <typename Wanted, typename Make>
std::vector<Measurement> each(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || !wanted(i)) continue;
    Measurement m{.subjects = {i.item.id}, .measured = std::nullopt, .places = {lineFrom(i.left, i.right)}};
    make(m, i);
    if (m.measured) found.push_back(std::move(m));
  }
  return found;
}

// Whether one reaches across a basin or its counter to it.
bool overCounter(const CheckInput& in, const PlacedWallItem& i) {
  return std::any_of(in.layout.fixtures.begin(), in.layout.fixtures.end(), [&](const PlacedFixture& f) {
    if (!counts(f) || !isBasin(f) || f.wall != i.wall) return false;
    const Length deep = f.fixture.depth, half = f.fixture.width / 2;
    const Length at = std::get<OnWall>(f.fixture.placement).along;
    return deep >= sizeOf(in, 0) && deep <= sizeOf(in, 1) && i.from < at + half && at - half < i.to;
  });
}

}  // namespace

std::vector<Measurement> storeHeights(const CheckInput& in) {
  const auto wanted = [](const PlacedWallItem& i) {
    return is(i.item, WallUse::shelf) || i.item.kind == "medicine-cabinet";
  };
  return each(in, wanted, [&](Measurement& m, const PlacedWallItem& i) {
    m.measured = is(i.item, WallUse::shelf) ? i.top : i.bottom;
    if (!overCounter(in, i)) return;
    m.limit_high = sizeOf(in, 2);
    m.detail = "over-counter";
  });
}

std::vector<Measurement> switchHeights(const CheckInput& in) {
  return each(
      in, [](const PlacedWallItem& i) { return is(i.item, WallUse::control); },
      [](Measurement& m, const PlacedWallItem& i) { m.measured = (i.bottom + i.top) / 2; });
}

std::vector<Measurement> grabBarHeights(const CheckInput& in) {
  return each(
      in,
      [](const PlacedWallItem& i) { return is(i.item, WallUse::grabBar) && i.item.width > i.item.height; },
      [](Measurement& m, const PlacedWallItem& i) { m.measured = i.top; });
}

std::vector<Measurement> paperHoldersAhead(const CheckInput& in) {
  return each(
      in, [](const PlacedWallItem& i) { return is(i.item, WallUse::holder); },
      [&](Measurement& m, const PlacedWallItem& i) {
        const Point at = midpoint(i.left, i.right);
        const PlacedFixture* toilet = nullptr;
        for (const PlacedFixture& f : in.layout.fixtures) {
          if (!counts(f) || f.fixture.kind != FixtureKind::toilet) continue;
          if (toilet == nullptr || distance(f.front_center, at) < distance(toilet->front_center, at))
            toilet = &f;
        }
        if (toilet == nullptr) return;
        const Length ahead = dot(at - toilet->front_center, toilet->facing);
        m.measured = ahead;
        m.subjects.push_back(toilet->fixture.id);
        m.places = {lineFrom(at - ahead * toilet->facing, at)};
      });
}

}  // namespace elbowroom::checks
