#include "core/rules/checks/mirrors.h"

#include <algorithm>

#include "core/people/sight.h"
#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/shared_searches.h"

namespace elbowroom::checks {
namespace {

using namespace literals;

constexpr Length kNeighbours = 6_in;

const PlacedWallItem* placed(const Layout& layout, const ElementId& id) {
  const auto at = std::find_if(layout.on_walls.begin(), layout.on_walls.end(),
                               [&](const PlacedWallItem& i) { return i.item.id == id; });
  return at == layout.on_walls.end() ? nullptr : &*at;
}
Place placeOf(const Layout& layout, const ElementId& id) {
  const PlacedWallItem* item = placed(layout, id);
  return item ? checks::placeOf(*item) : Place{};
}

template <typename Wanted>
std::vector<Measurement> eyesWithinEach(const CheckInput& in, Wanted wanted) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || i.item.person.empty() || !wanted(i)) continue;
    for (const Person& p : in.layout.settings.people) {
      if (p.name != i.item.person) continue;
      Measurement m{.subjects = {i.item.id}, .places = {checks::placeOf(i)}};
      m.measured = centreOf(i);
      // What is lower than the stretch in which a seated person's eyes may be is set to somewhere in it.
      const HeightBand band = eyesWithin({&p}, i.item.height).value_or(eyesOf(p));
      m.limit = band.low;
      m.limit_high = band.high;
      found.push_back(std::move(m));
    }
  }
  return found;
}

}  // namespace

std::vector<Measurement> mirrorsOverBacksplash(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedWallItem& i : in.layout.on_walls) {
    if (!counts(i) || (!is(i.item, WallUse::mirror) && i.item.kind != "medicine-cabinet")) continue;
    for (const PlacedFixture& f : in.layout.fixtures) {
      const auto splash = lengthOf(f.fixture.facts, "backsplash");
      if (!counts(f) || !isBasin(f) || f.wall != i.wall || !splash || !f.fixture.height) continue;
      const Length at = std::get<OnWall>(f.fixture.placement).along, half = f.fixture.width / 2;
      if (i.from >= at + half || i.to <= at - half) continue;
      found.push_back({.subjects = {i.item.id, f.fixture.id},
                       .measured = i.bottom,
                       .places = {checks::placeOf(i)},
                       .limit = *f.fixture.height + *splash});
    }
  }
  return found;
}

std::vector<Measurement> mirrorHolesToEdge(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const MirrorOrder& order : sharedMirrorOrders(in))
    for (const MirrorHole& hole : order.holes)
      found.push_back({.subjects = {hole.item, order.mirror},
                       .measured = rimToEdge(hole, order),
                       .places = {placeOf(in.layout, hole.item)},
                       .limit = glassToEdge(order.thickness)});
  return found;
}

std::vector<Measurement> mirrorHolesApart(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const MirrorOrder& order : sharedMirrorOrders(in))
    for (std::size_t i = 0; i < order.holes.size(); ++i)
      for (std::size_t k = 0; k < i; ++k) {
        const Length apart = rimToRim(order.holes[i], order.holes[k]);
        if (apart > kNeighbours) continue;
        found.push_back({.subjects = {order.holes[i].item, order.holes[k].item, order.mirror},
                         .measured = std::max(apart, Length{}),
                         .places = {placeOf(in.layout, order.holes[i].item), placeOf(in.layout, order.holes[k].item)},
                         .limit = glassBetweenHoles(order.thickness)});
      }
  return found;
}

std::vector<Measurement> mirrorItemsWhole(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const MirrorOrder& order : sharedMirrorOrders(in)) {
    Measurement m{.subjects = {order.mirror}, .measured = true, .places = {placeOf(in.layout, order.mirror)}};
    for (const MirrorTrouble& t : order.troubles) {
      if (t.kind != MirrorTroubleKind::itemOverEdge) continue;
      if (std::get<bool>(*m.measured)) {
        m.subjects.clear();
        m.places.clear();
      }
      m.measured = false;
      m.subjects.push_back(t.item);
      m.places.push_back(placeOf(in.layout, t.item));
    }
    if (std::get<bool>(*m.measured)) {
      if (order.holes.empty()) continue;
    } else {
      m.subjects.push_back(order.mirror);
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> makeupMirrorEyes(const CheckInput& in) {
  return eyesWithinEach(in, [](const PlacedWallItem& i) { return i.item.kind == "makeup-mirror"; });
}

std::vector<Measurement> sideLightEyes(const CheckInput& in) {
  return eyesWithinEach(in, [](const PlacedWallItem& i) {
    return is(i.item, WallUse::lamp) && i.item.height > i.item.width;
  });
}

std::vector<Measurement> mirrorsForChildren(const CheckInput& in) {
  const Person* smallest = nullptr;
  for (const Person& p : in.layout.settings.people)
    if (p.child && !p.chair && (!smallest || p.stature < smallest->stature)) smallest = &p;
  const PlacedWallItem* lowest = nullptr;
  for (const PlacedWallItem& i : in.layout.on_walls)
    if (counts(i) && checks::isMirror(i) &&
        (!lowest || i.bottom < lowest->bottom))
      lowest = &i;
  if (!smallest || !lowest) return {};
  const Length limit = mirrorFaceBottomFor(*smallest);
  return {{.subjects = {lowest->item.id},
           .measured = lowest->bottom,
           .places = {lineFrom(lowest->left, lowest->right)},
           .detail = (lowest->bottom <= limit ? "fits:" : "fits-not:") + smallest->name,
           .limit = limit}};
}

}  // namespace elbowroom::checks
