#include "core/rules/checks/at_water.h"

#include <algorithm>
#include <cmath>

#include "core/geometry/taut.h"
#include "core/people/body.h"
#include "core/plan/fixture_sides.h"
#include "core/plan/wall_catalogue.h"

namespace elbowroom::checks {
namespace {

using namespace literals;

constexpr double kDegree = 0.017453292519943295;
constexpr double kTilt = 20 * kDegree, kHalfCone = 10 * kDegree;
constexpr Length kSeat = 17_in;
constexpr Length kAtWall = 1_in;
// A hand reaches round the edge of a thing at the wall from a little in front of it.
constexpr Length kBarelyOff = Length::nanometres(25'400);

using Item = PlacedWallItem;

bool hasWater(const PlacedFixture& f) { return counts(f) && (isShower(f) || isBath(f)); }
const WallFrame& wallOf(const CheckInput& in, const Item& i) {
  return in.layout.walls[static_cast<std::size_t>(i.wall)];
}
const PlacedFixture* fixtureOf(const CheckInput& in, const ElementId& id) {
  for (const PlacedFixture& f : in.layout.fixtures)
    if (f.fixture.id == id && hasWater(f)) return &f;
  return nullptr;
}

std::vector<Segment> screensOf(const CheckInput& in) {
  std::vector<Segment> screens;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.glass.empty()) continue;
    for (const FixtureSide& side : sidesOf(in.layout, f))
      if (side.screen()) screens.push_back(side.line);
  }
  return screens;
}

// Standing adults' forward reach: the least or the greatest; of a stand-in where nobody is named.
Length reachOf(const CheckInput& in, bool greatest) {
  std::optional<Length> reach;
  for (const Person& p : in.layout.settings.people) {
    if (p.child || p.chair) continue;
    const Length r = reachAhead(p);
    if (!reach || (greatest ? r > *reach : r < *reach)) reach = r;
  }
  return reach.value_or(reachAhead(greatest ? tallMan() : medianWoman()));
}

std::optional<TautWay> shorter(std::optional<TautWay> a, std::optional<TautWay> b) {
  if (!a || (b && b->length < a->length)) return b;
  return a;
}

// From a place on a wall to the nearest open side; nothing in between is nearer than 0.
std::optional<TautWay> wayFromSides(const CheckInput& in, const PlacedFixture& f, Point at,
                                    const std::vector<Segment>& screens) {
  std::optional<TautWay> best;
  for (const FixtureSide& side : sidesOf(in.layout, f))
    if (side.open() && !(best && gapBetween(Segment{at, at}, side.line).distance >= best->length))
      best = shorter(best, tautWay(at, side.line, in.layout.room, screens));
  return best;
}

std::vector<Place> placesAlong(const TautWay& way) {
  std::vector<Place> places;
  for (std::size_t i = 0; i + 1 < way.points.size(); ++i)
    places.push_back(lineFrom(way.points[i], way.points[i + 1]));
  return places;
}

bool forTowels(const Item& i) {
  return counts(i) && (is(i.item, WallUse::rail) || is(i.item, WallUse::hook) || i.item.kind == "towel-heater");
}

struct Reached {
  const Item* item = nullptr;
  std::optional<TautWay> way;
};

// The thing on a wall, of those wanted, with the shortest way.
template <typename Wanted, typename Way>
Reached nearestOf(const CheckInput& in, Wanted wanted, Way way) {
  Reached nearest;
  for (const Item& i : in.layout.on_walls) {
    if (!wanted(i)) continue;
    auto one = way(i);
    if (one && !(nearest.way && one->length >= nearest.way->length)) nearest = {&i, std::move(one)};
  }
  return nearest;
}

Measurement reaching(const Item& i, const PlacedFixture& f, const TautWay& way, Length limit) {
  return {.subjects = {i.item.id, f.fixture.id},
          .measured = way.length,
          .places = placesAlong(way),
          .limit = limit};
}

template <typename Wanted, typename From>
std::vector<Measurement> towels(const CheckInput& in, Wanted wanted, From from) {
  std::vector<Measurement> found;
  const bool any = std::any_of(in.layout.on_walls.begin(), in.layout.on_walls.end(), forTowels);
  if (!any || in.layout.room.empty()) return found;
  const std::vector<Segment> screens = screensOf(in);
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!wanted(f)) continue;
    const Reached nearest =
        nearestOf(in, forTowels, [&](const Item& i) { return from(f, middleOf(i), screens); });
    if (nearest.way) found.push_back(reaching(*nearest.item, f, *nearest.way, reachOf(in, false)));
  }
  return found;
}

}  // namespace

SprayBand sprayOnWall(Length arm, Length z) {
  return {arm + z.scaled(std::tan(kTilt - kHalfCone)), arm + z.scaled(std::tan(kTilt + kHalfCone)),
          z.scaled(std::tan(kHalfCone) / std::cos(kTilt))};
}
SprayBand sprayFromCeiling(Length z) {
  const Length half = z.scaled(std::tan(kHalfCone));
  return {-half, half, half};
}

std::vector<Measurement> controlsOutOfSpray(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item& control : in.layout.on_walls) {
    if (control.item.kind != "control" || !counts(control) || !fixtureOf(in, control.item.shower)) continue;
    Measurement m{.subjects = {control.item.id}, .places = {placeOf(control)}};
    for (const Item& head : in.layout.on_walls) {
      if (head.item.kind != "shower-head" || !counts(head) || head.item.shower != control.item.shower) continue;
      const Length z = centreOf(head) - centreOf(control);
      if (z <= Length{}) continue;
      const WallFrame& wall = wallOf(in, head);
      const SprayBand band = sprayOnWall(head.depth, z);
      const Vector off = middleOf(control) - middleOf(head);
      const Length ahead = dot(off, wall.inward), aside = abs(dot(off, wall.along));
      const bool crossed =
          control.wall == head.wall ? aside <= band.half : ahead >= band.near && ahead <= band.far;
      m.subjects.push_back(head.item.id);
      m.measured = (!m.measured || std::get<bool>(*m.measured)) && !crossed;
    }
    for (const PlacedCeilingItem& head : in.layout.on_ceiling) {
      const PlacedFixture* f = fixtureOf(in, control.item.shower);
      const auto ceiling = in.layout.option.room.ceiling.height;
      if (head.item.kind != "shower-head" || !ceiling || !contains(f->footprint, head.item.at)) continue;
      const Length half = head.width / 2 + sprayFromCeiling(*ceiling - centreOf(control)).half;
      m.subjects.push_back(head.item.id);
      m.measured = (!m.measured || std::get<bool>(*m.measured)) && distance(head.item.at, middleOf(control)) > half;
    }
    if (m.measured) found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> controlsFromOutside(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  const std::vector<Segment> screens = screensOf(in);
  for (const Item& i : in.layout.on_walls) {
    const PlacedFixture* f = i.item.kind == "control" && counts(i) ? fixtureOf(in, i.item.shower) : nullptr;
    if (f == nullptr) continue;
    const auto way = wayFromSides(in, *f, middleOf(i), screens);
    if (way) found.push_back(reaching(i, *f, *way, reachOf(in, false)));
  }
  return found;
}

std::vector<Measurement> headsOverTallest(const CheckInput& in) {
  std::vector<Measurement> found;
  const Person* tallest = nullptr;
  for (const Person& p : in.layout.settings.people)
    if (!p.chair && (!tallest || p.stature > tallest->stature)) tallest = &p;
  if (!tallest) return found;
  for (const Item& i : in.layout.on_walls) {
    if (i.item.kind != "shower-head" || !counts(i)) continue;
    const bool fits = i.bottom >= tallest->stature;
    found.push_back({.subjects = {i.item.id},
                     .measured = i.bottom,
                     .places = {placeOf(i)},
                     .detail = (fits ? "fits:" : "fits-not:") + tallest->name,
                     .limit = tallest->stature});
  }
  return found;
}

std::vector<Measurement> hosesReachCorners(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  const std::vector<Segment> screens = screensOf(in);
  for (const Item& i : in.layout.on_walls) {
    const PlacedFixture* f = i.item.kind == "hand-spray" && counts(i) ? fixtureOf(in, i.item.shower) : nullptr;
    if (f == nullptr) continue;
    std::optional<TautWay> farthest;
    for (const Point& corner : f->footprint) {
      const auto way = tautWay(middleOf(i), {corner, corner}, in.layout.room, screens);
      if (way && (!farthest || way->length > farthest->length)) farthest = way;
    }
    if (!farthest) continue;
    const double across = farthest->length.inches(), down = (i.bottom - kSeat).inches();
    Measurement m{.subjects = {i.item.id, f->fixture.id},
                  .places = placesAlong(*farthest),
                  .limit = Length::fromInches(std::hypot(across, down))};
    if (const auto hose = lengthOf(i.item.facts, "hose"))
      m.measured = *hose;
    else
      m.fact = "hose";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> switchesOutOfReach(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  const std::vector<Segment> screens = screensOf(in);
  const auto concerns = [](const Item& i) {
    return is(i.item, WallUse::control) && counts(i) && !yesNo(i.item.facts, "shower_assembly").value_or(false);
  };
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!hasWater(f)) continue;
    const Reached nearest = nearestOf(in, concerns, [&](const Item& i) -> std::optional<TautWay> {
      const Point at = middleOf(i);
      if (gapFromPoint(at, f.footprint).distance <= kAtWall)
        return TautWay{Length{}, {at, at + kBarelyOff * wallOf(in, i).inward}};
      return wayFromSides(in, f, at, screens);
    });
    if (nearest.way) found.push_back(reaching(*nearest.item, f, *nearest.way, reachOf(in, true)));
  }
  return found;
}

std::vector<Measurement> towelsAtShowers(const CheckInput& in) {
  return towels(in, hasWater, [&](const PlacedFixture& f, Point at, const std::vector<Segment>& screens) {
    return wayFromSides(in, f, at, screens);
  });
}

std::vector<Measurement> towelsAtBasins(const CheckInput& in) {
  return towels(
      in, [](const PlacedFixture& f) { return counts(f) && isBasin(f); },
      [&](const PlacedFixture& f, Point at, const std::vector<Segment>& screens) {
        return tautWay(at, f.front, in.layout.room, screens);
      });
}

}  // namespace elbowroom::checks
