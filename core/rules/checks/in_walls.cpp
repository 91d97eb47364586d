#include "core/rules/checks/in_walls.h"

#include <algorithm>

#include "core/plan/bays.h"
#include "core/plan/ceiling.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {
namespace {

using namespace literals;
using Item = PlacedWallItem;

constexpr Length kAtBasin = 36_in;  // guideline 24

bool countsOnWall(const Item& i) { return i.wall >= 0 && i.item.status != Status::remove; }
bool isRecess(const Item& i) { return countsOnWall(i) && is(i.item, WallUse::recess) && i.recessed; }
Place placeOf(const Item& i) { return lineFrom(i.left, i.right); }
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
  for (const Item& i : in.layout.on_walls) {
    if (!countsOnWall(i)) continue;
    Measurement m{.subjects = {i.item.id}, .places = {placeOf(i)}};
    const auto left = ceilingHeightAt(in.layout, i.left), right = ceilingHeightAt(in.layout, i.right);
    if (left && right) {
      m.measured = i.top;
      m.limit = std::min(*left, *right);
    } else {
      m.detail = "ceiling-not-stated";
      m.fact = "ceiling.height";
    }
    found.push_back(std::move(m));
    if (!left || !right) break;  // the room is asked once
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
      if (!countsOnWall(i) || !is(i.item, WallUse::receptacle)) continue;
      if (gapFromPoint(midpoint(i.left, i.right), f.footprint).distance > kAtBasin) continue;
      ++there;
      m.places.push_back(placeOf(i));
    }
    if (there == 0) continue;
    m.measured = Count{there};
    m.limit = Count{*basinsOf(f)};
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> paperHolderHeights(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item& i : in.layout.on_walls)
    if (countsOnWall(i) && is(i.item, WallUse::holder))
      found.push_back(
          {.subjects = {i.item.id}, .measured = (i.bottom + i.top) / 2, .places = {placeOf(i)}});
  return found;
}

}  // namespace elbowroom::checks
