#include "core/rules/checks/in_walls.h"

#include <algorithm>
#include <optional>

#include "core/plan/bays.h"
#include "core/plan/ceiling.h"
#include "core/plan/glass_hinges.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {
namespace {

using namespace literals;
using Item = PlacedWallItem;

constexpr Length kAtBasin = 36_in;  // guideline 24

bool isRecess(const Item& i) { return counts(i) && is(i.item, WallUse::recess) && i.recessed; }
const Wall& wallOf(const CheckInput& in, const Item& i) {
  return in.layout.option.room.walls[static_cast<std::size_t>(i.wall)];
}

}  // namespace

std::vector<Measurement> recessesOffPipes(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item& i : in.layout.on_walls)
    if (isRecess(i))
      found.push_back(
          {.subjects = {i.item.id, i.item.wall}, .measured = !wallOf(in, i).plumbing, .places = {placeOf(i)}});
  return found;
}

std::vector<Measurement> recessLoads(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item& i : in.layout.on_walls) {
    if (!isRecess(i)) continue;
    const auto fit = bayFit(in.layout, i);
    if (!fit || fit->cut.empty()) continue;
    Measurement m{.subjects = {i.item.wall, i.item.id}, .measured = std::nullopt, .places = {placeOf(i)}};
    if (const auto bears = yesNo(wallOf(in, i).facts, "load_bearing"))
      m.measured = !*bears;
    else
      m.fact = "load_bearing";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> itemsUnderCeiling(const CheckInput& in) {
  std::vector<Measurement> found;
  std::vector<std::optional<Measurement>> nearest(in.layout.walls.size());
  const auto spare = [](const Measurement& m) { return std::get<Length>(*m.limit) - std::get<Length>(*m.measured); };
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i)) continue;
    Measurement m{.subjects = {i.item.id}, .places = {placeOf(i)}};
    const auto left = ceilingHeightAt(in.layout, i.left), right = ceilingHeightAt(in.layout, i.right);
    if (!left || !right) {
      m.detail = "ceiling-not-stated";
      m.fact = "ceiling.height";
      return {m};
    }
    m.measured = i.top;
    m.limit = std::min(*left, *right);
    if (spare(m) < Length{}) {
      found.push_back(std::move(m));
      continue;
    }
    auto& kept = nearest[static_cast<std::size_t>(i.wall)];
    if (!kept || spare(m) < spare(*kept)) kept = std::move(m);
  }
  for (auto& kept : nearest)
    if (kept) found.push_back(std::move(*kept));
  return found;
}

std::vector<Measurement> openingsUnderCeiling(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    const bool door = o.opening.kind == OpeningKind::door;
    const auto left = ceilingHeightAt(in.layout, o.left), right = ceilingHeightAt(in.layout, o.right);
    if (!left || !right || (!door && !o.opening.sill)) continue;
    found.push_back({.subjects = {o.opening.id},
                     .measured = (door ? Length{} : *o.opening.sill) + o.opening.height,
                     .places = {lineFrom(o.left, o.right)},
                     .limit = std::min(*left, *right)});
  }
  return found;
}

std::vector<Measurement> receptaclesPerPerson(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f) || basinsOf(f).value_or(1) < 2) continue;
    Measurement m{.subjects = {f.fixture.id}, .places = {lineFrom(f.front.a, f.front.b)}};
    int there = 0;
    for (const Item& i : in.layout.on_walls) {
      if (!counts(i) || !is(i.item, WallUse::receptacle)) continue;
      if (gapFromPoint(midpoint(i.left, i.right), f.footprint).distance > kAtBasin) continue;
      ++there;
      m.places.push_back(placeOf(i));
    }
    m.measured = Count{there};
    m.limit = Count{*basinsOf(f)};
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> paperHolderHeights(const CheckInput& in) {
  return eachOnWall(
      in, [](const Item& i) { return is(i.item, WallUse::holder); },
      [](Measurement& m, const Item& i) { m.measured = centreOf(i); });
}

std::vector<Measurement> grabBarPlywood(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i) || !is(i.item, WallUse::grabBar) || pullOf(i.item) != Pull::bar) continue;
    const Wall& wall = wallOf(in, i);
    if (!yesNo(wall.facts, "backed").value_or(false) || yesNo(i.item.facts, "blocking").value_or(false)) continue;
    Measurement m{.subjects = {wall.id, i.item.id}, .measured = std::nullopt, .places = {placeOf(i)}};
    if (const auto plywood = lengthOf(wall.facts, "backing_plywood"))
      m.measured = *plywood;
    else
      m.fact = "backing_plywood";
    found.push_back(std::move(m));
  }
  return found;
}

namespace {

Measurement backedBehind(const Wall& wall, const ElementId& id, const Facts& facts, Pull pull, Place place) {
  Measurement m{.subjects = {id}, .measured = std::nullopt, .places = {std::move(place)}};
  askBacked(m, wall, id, facts, pull);
  return m;
}

}  // namespace

std::vector<Measurement> wallHungBacked(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const bool hangs = isBasin(f) || f.fixture.kind == FixtureKind::bench;
    if (!counts(f) || f.wall < 0 || !hangs || !yesNo(f.fixture.facts, "wall_hung").value_or(false)) continue;
    found.push_back(backedBehind(in.layout.option.room.walls[static_cast<std::size_t>(f.wall)], f.fixture.id,
                                 f.fixture.facts, Pull::heavy, lineFrom(f.left_side.a, f.right_side.a)));
  }
  for (const Item& i : in.layout.on_walls)
    if (counts(i) && is(i.item, WallUse::heat))
      found.push_back(backedBehind(wallOf(in, i), i.item.id, i.item.facts, Pull::light, placeOf(i)));
  return found;
}

std::vector<Measurement> glassHingesBacked(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const GlassHinge& hinge : glassHinges(in.layout)) {
    const ElementId& wall = in.layout.walls[static_cast<std::size_t>(hinge.wall)].id;
    Measurement m{.subjects = {hinge.fixture, wall}, .measured = std::nullopt, .places = {pointAt(hinge.at)}};
    if (const auto stated = yesNo(findFixture(in.layout.option, hinge.fixture)->facts, "hinge_backing"))
      m.measured = *stated;
    else
      m.fact = "hinge_backing";
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
