#include "core/rules/checks/grab_bars.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/bars.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// Nobody holds a bar on a wall farther from the centreline than this.
constexpr Length kWithinReach = 36_in;
// Nor one that begins farther ahead of the bowl.
constexpr Length kAhead = 18_in;

template <typename Make>
std::vector<Measurement> perToilet(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet || in.layout.room.empty()) continue;
    if (auto m = make(f, i)) found.push_back(std::move(*m));
  }
  return found;
}

// The longest bar of that kind on one of the walls round a toilet.
const PlacedWallItem* longest(const CheckInput& in, const PlacedFixture& f, Spot::On on,
                              bool (*kind)(const PlacedWallItem&)) {
  const PlacedWallItem* best = nullptr;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || !kind(i)) continue;
    const Spot spot = spotOf(in.layout, f, i);
    const bool rear = on == Spot::On::rear;
    if (spot.on != on ||
        (rear ? abs(spot.left()) > kWithinReach : spot.out_from > reachFromWall(in.layout, f) + kAhead))
      continue;
    if (!rear && abs(spot.left()) > kWithinReach) continue;
    if (!best || i.item.width + i.item.height > best->item.width + best->item.height) best = &i;
  }
  return best;
}

Spot::On onSide(Hand hand) { return hand == Hand::left ? Spot::On::left : Spot::On::right; }

void backedInstead(const CheckInput& in, Measurement& m, const PlacedFixture& f, const WallFrame& wall) {
  m.places = {lineFrom(f.back_center, f.front_center)};
  askBacked(m, *findWall(in.layout.option, wall.id), f.fixture.id, {}, Pull::bar);
}

// Is a bar of that kind on the wall, or the wall backed for one?
Measurement thereOrBacked(const CheckInput& in, const PlacedFixture& f, const WallFrame& wall, Spot::On on,
                          bool (*kind)(const PlacedWallItem&)) {
  Measurement m{.subjects = {f.fixture.id, wall.id}};
  if (const PlacedWallItem* bar = longest(in, f, on, kind)) {
    m.measured = true;
    m.places = {placeOf(*bar)};
  } else {
    backedInstead(in, m, f, wall);
  }
  return m;
}

// The bar of that kind on the toilet's nearer side wall, with its place.
template <typename Make>
std::vector<Measurement> perSideBar(const CheckInput& in, bool (*kind)(const PlacedWallItem&), Make make) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    const auto side = nearerWall(in.layout, f, kWithinReach);
    if (!side) return std::nullopt;
    const PlacedWallItem* bar = longest(in, f, onSide(side->hand), kind);
    if (!bar) return std::nullopt;
    Measurement m{.subjects = {bar->item.id, f.fixture.id}, .places = {placeOf(*bar)}};
    m.measured = make(*bar, spotOf(in.layout, f, *bar));
    return m;
  });
}

template <typename Make>
std::vector<Measurement> perRearBar(const CheckInput& in, Make make) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    const PlacedWallItem* bar = longest(in, f, Spot::On::rear, alongWall);
    if (!bar) return std::nullopt;
    const Spot spot = spotOf(in.layout, f, *bar);
    Measurement m{.subjects = {bar->item.id, f.fixture.id}, .places = {placeOf(*bar)}};
    make(m, *bar, std::max(Length{}, spot.left_to), std::max(Length{}, -spot.left_from));
    return m;
  });
}

template <typename Make>
std::vector<Measurement> perFoldBar(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  for (std::size_t k = 0; k < in.layout.fixtures.size(); ++k) {
    const PlacedFixture& f = in.layout.fixtures[k];
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet) continue;
    for (const PlacedWallItem& i : in.layout.on_walls) {
      if (!counts(i) || i.item.kind != "grab-bar-fold") continue;
      const Spot spot = spotOf(in.layout, f, i);
      if (spot.on != Spot::On::rear || abs(spot.left()) > kWithinReach) continue;
      Measurement m{.subjects = {i.item.id, f.fixture.id}, .places = {placeOf(i)}};
      make(m, i, spot, f, k);
      found.push_back(std::move(m));
    }
  }
  return found;
}

}  // namespace

std::vector<Measurement> toiletSideBars(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    const auto side = nearerWall(in.layout, f, sizeOf(in, 0));
    if (!side) return std::nullopt;
    return thereOrBacked(in, f, *side->wall, onSide(side->hand), alongWall);
  });
}
std::vector<Measurement> toiletUprightBars(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    const auto side = nearerWall(in.layout, f, sizeOf(in, 0));
    if (!side) return std::nullopt;
    return thereOrBacked(in, f, *side->wall, onSide(side->hand), upright);
  });
}
std::vector<Measurement> toiletRearBars(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    if (f.wall < 0) return std::nullopt;
    return thereOrBacked(in, f, in.layout.walls[static_cast<std::size_t>(f.wall)], Spot::On::rear, alongWall);
  });
}

std::vector<Measurement> toiletWallsBacked(const CheckInput& in) {
  return perToilet(in, [&](const PlacedFixture& f, std::size_t) -> std::optional<Measurement> {
    if (f.wall < 0) return std::nullopt;
    Measurement m{.subjects = {f.fixture.id}};
    backedInstead(in, m, f, in.layout.walls[static_cast<std::size_t>(f.wall)]);
    const auto side = nearerWall(in.layout, f, sizeOf(in, 0));
    if (side && m.measured == Quantity{true}) backedInstead(in, m, f, *side->wall);
    return m;
  });
}
std::vector<Measurement> bathWallsBacked(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBath(f) || f.wall < 0) continue;
    Measurement m{.subjects = {f.fixture.id}};
    backedInstead(in, m, f, in.layout.walls[static_cast<std::size_t>(f.wall)]);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> toiletSideBarStarts(const CheckInput& in) {
  return perSideBar(in, alongWall, [](const PlacedWallItem&, const Spot& s) { return s.out_from; });
}
std::vector<Measurement> toiletSideBarEnds(const CheckInput& in) {
  return perSideBar(in, alongWall, [](const PlacedWallItem&, const Spot& s) { return s.out_to; });
}
std::vector<Measurement> uprightBarLengths(const CheckInput& in) {
  return perSideBar(in, upright, [](const PlacedWallItem& i, const Spot&) { return i.item.height; });
}
std::vector<Measurement> uprightBarBottoms(const CheckInput& in) {
  return perSideBar(in, upright, [](const PlacedWallItem& i, const Spot&) { return i.bottom; });
}
std::vector<Measurement> uprightBarsFromRear(const CheckInput& in) {
  return perSideBar(in, upright, [](const PlacedWallItem&, const Spot& s) { return s.out(); });
}

std::vector<Measurement> toiletRearBarsNear(const CheckInput& in) {
  return perRearBar(in, [](Measurement& m, const PlacedWallItem&, Length left, Length right) {
    m.measured = std::min(left, right);
  });
}
std::vector<Measurement> toiletRearBarsFar(const CheckInput& in) {
  return perRearBar(in, [&](Measurement& m, const PlacedWallItem& bar, Length left, Length right) {
    m.measured = std::max(left, right);
    if (in.layout.walls[static_cast<std::size_t>(bar.wall)].length < sizeOf(in, 0)) m.limit = sizeOf(in, 1);
  });
}

std::vector<Measurement> grabBarTops(const CheckInput& in) {
  return eachOnWall(
      in,
      [&](const PlacedWallItem& i) {
        return alongWall(i) && i.item.kind != "grab-bar-l" && !isLowerBathBar(in.layout, i);
      },
      [](Measurement& m, const PlacedWallItem& i) { m.measured = i.top; });
}
std::vector<Measurement> grabBarCentres(const CheckInput& in) {
  return eachOnWall(
      in,
      [&](const PlacedWallItem& i) {
        return alongWall(i) && i.item.kind != "grab-bar-l" && !isLowerBathBar(in.layout, i);
      },
      [](Measurement& m, const PlacedWallItem& i) { m.measured = centreOf(i); });
}

namespace {
std::vector<Measurement> statedOfBars(const CheckInput& in, const char* fact) {
  return eachOnWall(
      in,
      [](const PlacedWallItem& i) { return is(i.item, WallUse::grabBar) && i.item.kind != "grab-bar-fold"; },
      [&](Measurement& m, const PlacedWallItem& i) {
        if (const auto stated = lengthOf(i.item.facts, fact))
          m.measured = *stated;
        else
          m.fact = fact;
      });
}

// What lies flat on the wall is in no hand's way.
const Length kFlat = 0.5_in;
bool projects(const PlacedWallItem& i) { return counts(i) && !i.recessed && i.depth > kFlat; }

// The nearest thing on the same wall for which `gap` gives a distance.
template <typename GapTo>
std::vector<Measurement> nearestTo(const CheckInput& in, GapTo gap, Length nearer_for_water) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& bar : in.layout.on_walls) {
    if (!counts(bar) || !alongWall(bar) || bar.item.kind == "grab-bar-l") continue;
    std::optional<Measurement> worst;
    Length least_spare;
    for (const PlacedWallItem& o : in.layout.on_walls) {
      if (&o == &bar || o.wall != bar.wall || !projects(o)) continue;
      const std::optional<Length> apart = gap(bar, o);
      if (!apart) continue;
      const bool may_be_near = is(o.item, WallUse::water) || is(o.item, WallUse::grabBar);
      const Length limit = nearer_for_water > Length{} && may_be_near ? nearer_for_water : limitOf(in);
      if (worst && *apart - limit >= least_spare) continue;
      least_spare = *apart - limit;
      worst = Measurement{
          .subjects = {bar.item.id, o.item.id}, .measured = *apart, .places = {placeOf(bar)}, .limit = limit};
    }
    if (worst) found.push_back(std::move(*worst));
  }
  return found;
}
}  // namespace

std::vector<Measurement> grabBarGaps(const CheckInput& in) { return statedOfBars(in, "wall_gap"); }
std::vector<Measurement> grabBarDiameters(const CheckInput& in) { return statedOfBars(in, "bar_diameter"); }

std::vector<Measurement> grabBarsBelowThings(const CheckInput& in) {
  return nearestTo(
      in,
      [](const PlacedWallItem& bar, const PlacedWallItem& o) -> std::optional<Length> {
        if (centreOf(o) < centreOf(bar) || !meet(bar.from, bar.to, o.from, o.to)) return std::nullopt;
        return std::max(Length{}, o.bottom - bar.top);
      },
      sizeOf(in, 0));
}
std::vector<Measurement> grabBarsAboveThings(const CheckInput& in) {
  return nearestTo(in,
                   [](const PlacedWallItem& bar, const PlacedWallItem& o) -> std::optional<Length> {
                     if (meet(bar.from, bar.to, o.from, o.to)) {
                       if (centreOf(o) >= centreOf(bar)) return std::nullopt;
                       return std::max(Length{}, bar.bottom - o.top);
                     }
                     if (!meet(bar.bottom, bar.top, o.bottom, o.top)) return std::nullopt;
                     return std::max(o.from - bar.to, bar.from - o.to);
                   },
                   {});
}

std::vector<Measurement> foldBarLengths(const CheckInput& in) {
  return perFoldBar(in, [](Measurement& m, const PlacedWallItem& i, const Spot&, const PlacedFixture&,
                           std::size_t) { m.measured = i.depth; });
}
std::vector<Measurement> foldBarsFromCentreline(const CheckInput& in) {
  return perFoldBar(in, [](Measurement& m, const PlacedWallItem&, const Spot& spot, const PlacedFixture&,
                           std::size_t) { m.measured = abs(spot.left()); });
}
std::vector<Measurement> foldBarSides(const CheckInput& in) {
  return perFoldBar(in, [&](Measurement& m, const PlacedWallItem&, const Spot& spot, const PlacedFixture& f,
                            std::size_t at) {
    const bool left = spot.left() > Length{};
    const Ahead& near = left ? in.around[at].left : in.around[at].right;
    m.subjects = {f.fixture.id, idOf(in.layout, near)};
    m.measured = near.distance;
    m.places = placesOf(centreline(f), left ? leftOf(f) : rightOf(f), near, limitOf(in));
  });
}
std::vector<Measurement> foldBarsAboveSeat(const CheckInput& in) {
  return perFoldBar(
      in, [](Measurement& m, const PlacedWallItem& i, const Spot&, const PlacedFixture& f, std::size_t) {
        if (const auto seat = lengthOf(f.fixture.facts, "seat_height")) {
          m.measured = i.top - *seat;
          return;
        }
        m.subjects = {f.fixture.id, i.item.id};
        m.fact = "seat_height";
      });
}

}  // namespace elbowroom::checks
