// Receptacles, lights and switches at the water of baths and showers.
#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/electrical.h"
#include "core/rules/checks/electrical_places.h"
#include "core/rules/checks/wet.h"

namespace elbowroom::checks {
namespace {

using namespace literals;
using Item = PlacedWallItem;

Length size(const CheckInput& in, std::size_t i) {
  return in.rule != nullptr && in.rule->sizes.size() > i ? in.rule->sizes[i] : Length{};
}

bool isIn(const CheckInput& in, const Item& i, const PlacedFixture& water) {
  const Vector before = kBeforeWall * in.layout.walls[static_cast<std::size_t>(i.wall)].inward;
  return gapBetween(Outline{i.left, i.right, i.right + before, i.left + before}, water.footprint).overlap;
}

// NEC 2023 406.9(C) exception 2: in a room that the zone fills, the receptacle of a basin may be on the
// farthest wall. That wall's distance; nullopt: the room is larger.
std::optional<Length> farthestWall(const CheckInput& in, const PlacedFixture& water, int wall) {
  Length farthest;
  int far_wall = -1;
  for (std::size_t i = 0; i < in.layout.walls.size(); ++i) {
    const WallFrame& frame = in.layout.walls[i];
    if (gapFromPoint(frame.from, water.footprint).distance >= limitOf(in)) return std::nullopt;
    const Length gap = gapBetween(Outline{frame.from, frame.to}, water.footprint).distance;
    if (far_wall < 0 || gap > farthest) farthest = gap, far_wall = static_cast<int>(i);
  }
  if (wall != far_wall) return std::nullopt;
  return farthest;
}

bool hasBasin(const Layout& layout) {
  return std::any_of(layout.fixtures.begin(), layout.fixtures.end(),
                     [](const PlacedFixture& f) { return counts(f) && isBasin(f); });
}

// The toilet whose seat the receptacle serves: the nearest one.
const PlacedFixture* toiletOf(const Layout& layout, const Item& i) {
  const PlacedFixture* best = nullptr;
  Length least;
  for (const PlacedFixture& f : layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet) continue;
    const Length gap = gapFromPoint(middleOf(i), f.footprint).distance;
    if (best == nullptr || gap < least) best = &f, least = gap;
  }
  return best;
}

bool servesSeat(const Item& i) { return yesNo(i.item.facts, "for_toilet_seat") == true; }

bool mayServeSeat(const Layout& layout, const Item& i, const PlacedFixture& water) {
  const PlacedFixture* toilet = toiletOf(layout, i);
  if (toilet == nullptr) return false;
  const auto across = [&](Point p) { return dot(p - toilet->center, leftOf(*toilet)); };
  const Length tank = toilet->fixture.tank_width.value_or(toilet->fixture.width) / 2;
  const bool behind = i.wall == toilet->wall &&
                      (across(i.left) > Length{} ? std::min(across(i.left), across(i.right)) >= tank
                                                 : std::max(across(i.left), across(i.right)) <= -tank);
  const bool other_side = (across(middleOf(i)) > Length{}) != (across(centroidOf(water.footprint)) > Length{});
  return behind || other_side;
}

enum class Heights { all, fromRim, belowRim };

// nullopt: the plan does not say how high the rim is.
std::optional<bool> concerns(const CheckInput& in, const Item& i, const PlacedFixture& water,
                             Heights heights) {
  const auto rim = rimOf(water);
  const Length height = boxHeightOf(i), reach = size(in, 0);
  if (heights == Heights::all) {
    if (height <= reach) return true;  // whatever the rim
    return rim ? std::optional(height <= *rim + reach) : std::nullopt;
  }
  // A shower without a stated curb: the zone begins at the floor.
  if (!rim && !isShower(water)) return std::nullopt;
  const bool below = height < rim.value_or(Length{});
  return heights == Heights::belowRim ? below : !below && height <= rim.value_or(Length{}) + reach;
}

std::vector<Measurement> offWater(const CheckInput& in, Heights heights) {
  std::vector<Measurement> found;
  for (const Item* i : receptaclesOf(in.layout)) {
    if (servesSeat(*i)) continue;  // toiletSeatReceptacles
    std::optional<Measurement> worst;
    Length worst_spare;
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      bool asks = false;
      const Gap straight = gapBetween(widthOf(*i), water.footprint);
      const auto gap =
          heights == Heights::all ? wayToWater(in.layout, *i, water, asks) : std::optional(straight);
      const std::optional<bool> in_height = concerns(in, *i, water, heights);
      if (in_height == false) continue;
      Measurement m{.subjects = {i->item.id, water.fixture.id}};
      const Gap shown = gap.value_or(straight);
      m.places = {lineFrom(shown.from, shown.to)};
      Length limit = limitOf(in);
      if (!gap) {
        // Cut off from the water altogether: no distance is asked for.
        if (asks && straight.distance < limit) {
          m.subjects = {water.fixture.id, i->item.id};
          m.fact = "glass.height";
          m.detail = "glass-height-not-stated";
        } else {
          m.measured = straight.distance;
          if (straight.distance < limit) m.limit = limit = Length{};
          m.detail = "barrier-between";
        }
      } else if (asks && straight.distance < limit && gap->distance >= limit) {
        m.subjects = {water.fixture.id, i->item.id};
        m.fact = "glass.height";
        m.detail = "glass-height-not-stated";
      } else if (!in_height && gap->distance < limit) {
        if (heights == Heights::belowRim) continue;  // asked once, by the rule for those above it
        m.subjects = {water.fixture.id, i->item.id};
        m.fact = rimFactOf(water);
      } else {
        m.measured = gap->distance;
        if (gap->distance < limit && hasBasin(in.layout)) {
          if (const auto wall = farthestWall(in, water, i->wall)) {
            limit = *wall;
            m.limit = limit;
            m.detail = "farthest-wall";
          }
        }
      }
      const Length spare = m.measured ? std::get<Length>(*m.measured) - limit : Length{};
      if (worst && worst_spare <= spare) continue;
      worst = std::move(m);
      worst_spare = spare;
    }
    if (worst) found.push_back(std::move(*worst));
  }
  return found;
}

// Lights by what rules about water ask of them.
struct Light {
  ElementId id;
  const Facts* facts;
  Outline outline;
  Point at;
  std::optional<Length> bottom;  // nullopt: at the ceiling
};

std::vector<Light> lightsOf(const Layout& layout) {
  std::vector<Light> found;
  for (const PlacedCeilingItem& c : layout.on_ceiling)
    if (c.item.kind == "light")
      found.push_back({c.item.id, &c.item.facts, c.outline, c.item.at, lengthOf(c.item.facts, "lower_edge")});
  for (const Item& i : layout.on_walls) {
    if (!counts(i) || !is(i.item, WallUse::lamp)) continue;
    const Vector before =
        std::max(i.depth, kBeforeWall) * layout.walls[static_cast<std::size_t>(i.wall)].inward;
    found.push_back(
        {i.item.id, &i.item.facts, {i.left, i.left + before, i.right + before, i.right}, middleOf(i), i.bottom});
  }
  return found;
}

void listed(Measurement& m, const Facts& facts, bool damp_is_enough) {
  const auto wet = yesNo(facts, "wet_listed"), damp = yesNo(facts, "damp_listed");
  if (wet == true || (damp_is_enough && damp == true))
    m.measured = true;
  else if (damp_is_enough ? damp == false : wet == false)
    m.measured = false;
  else
    m.fact = damp_is_enough ? "damp_listed" : "wet_listed";
}

// Whether something that ends this high above the floor is above the zone of `up` over the rim; without a
// height it is at the ceiling. nullopt: not known.
std::optional<bool> isAbove(const Layout& layout, std::optional<Length> bottom, const PlacedFixture& water,
                            Length up) {
  const std::optional<Length> level = bottom ? bottom : layout.option.room.ceiling.height;
  if (!level) return std::nullopt;
  if (*level <= up) return false;
  const auto rim = rimOf(water);
  return rim ? std::optional(*level > *rim + up) : std::nullopt;
}

}  // namespace

std::vector<Measurement> receptaclesOffWater(const CheckInput& in) { return offWater(in, Heights::all); }
std::vector<Measurement> receptaclesOffWaterAboveRim(const CheckInput& in) {
  return offWater(in, Heights::fromRim);
}
std::vector<Measurement> receptaclesOffWaterBelowRim(const CheckInput& in) {
  return offWater(in, Heights::belowRim);
}

std::vector<Measurement> receptaclesNotOverWater(const CheckInput& in) {
  std::vector<Measurement> found;
  const bool water = std::any_of(in.layout.fixtures.begin(), in.layout.fixtures.end(), takesWater);
  if (!water) return found;
  for (const Item* i : receptaclesOf(in.layout)) {
    Measurement m{.subjects = {i->item.id}, .measured = true, .places = {lineFrom(i->left, i->right)}};
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!takesWater(f) || !isIn(in, *i, f)) continue;
      m.measured = false;
      m.subjects.push_back(f.fixture.id);
      break;
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> toiletSeatReceptacles(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Item* i : receptaclesOf(in.layout)) {
    if (!servesSeat(*i)) continue;
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      const Gap gap = gapBetween(widthOf(*i), water.footprint);
      if (gap.distance >= size(in, 0)) continue;
      found.push_back({.subjects = {i->item.id, water.fixture.id},
                       .measured = mayServeSeat(in.layout, *i, water),
                       .places = {lineFrom(gap.from, gap.to)}});
    }
  }
  return found;
}

std::vector<Measurement> receptaclesAtToilets(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet ||
        yesNo(f.fixture.facts, "electric_seat") != true)
      continue;
    Measurement m{
        .subjects = {f.fixture.id}, .places = {pointAt(f.center)}, .detail = "receptacle-not-placed"};
    Length least;
    for (const Item* i : receptaclesOf(in.layout)) {
      const Gap gap = gapFromPoint(middleOf(*i), f.footprint);
      if (m.measured && gap.distance >= least) continue;
      least = gap.distance;
      m = {.subjects = {i->item.id, f.fixture.id}, .measured = least, .places = {lineFrom(gap.from, gap.to)}};
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> receptaclesGfciNearWater(const CheckInput& in) {
  std::vector<Measurement> found;
  if (isBathroom(in.layout)) return found;
  for (const Item* i : receptaclesOf(in.layout)) {
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      const Gap gap = gapBetween(widthOf(*i), water.footprint);
      if (gap.distance > size(in, 0)) continue;
      Measurement m{.subjects = {i->item.id, water.fixture.id}, .places = {lineFrom(gap.from, gap.to)}};
      if (const auto gfci = yesNo(i->item.facts, "gfci"))
        m.measured = *gfci;
      else
        m.fact = "gfci";
      found.push_back(std::move(m));
      break;
    }
  }
  return found;
}

std::vector<Measurement> hangingLightsOffWater(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedCeilingItem& c : in.layout.on_ceiling) {
    const auto hangs = yesNo(c.item.facts, "hanging");
    if (c.item.kind != "light" || hangs == false) continue;
    std::optional<Measurement> nearest;
    Length least;
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      const Gap gap = gapBetween(c.outline, water.footprint);
      const auto above = isAbove(in.layout, lengthOf(c.item.facts, "lower_edge"), water, size(in, 0));
      if (nearest && gap.distance >= least) continue;
      Measurement m{.subjects = {c.item.id, water.fixture.id}, .places = {lineFrom(gap.from, gap.to)}};
      const bool far = gap.distance >= limitOf(in);
      if (!hangs && far) continue;  // neither way of hanging matters there
      if (far) {
        m.measured = gap.distance;
      } else if (!hangs) {
        m.fact = "hanging";
      } else if (above == true && lengthOf(c.item.facts, "lower_edge")) {
        continue;
      } else if (above == false) {
        m.measured = gap.distance;
      } else if (!lengthOf(c.item.facts, "lower_edge")) {
        m.fact = "lower_edge";
      } else {
        m.subjects = {water.fixture.id, c.item.id};
        m.fact = rimFactOf(water);
      }
      least = gap.distance;
      nearest = std::move(m);
    }
    if (nearest) found.push_back(std::move(*nearest));
  }
  return found;
}

std::vector<Measurement> lightsDamp(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const Light& light : lightsOf(in.layout)) {
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      const Gap gap = gapBetween(light.outline, water.footprint);
      const bool within = size(in, 1) > Length{} ? gap.distance < size(in, 1) : gap.overlap;
      if (!within || isAbove(in.layout, light.bottom, water, size(in, 0)) == true) continue;
      Measurement m{.subjects = {light.id, water.fixture.id}, .places = {pointAt(light.at)}};
      listed(m, *light.facts, true);
      found.push_back(std::move(m));
      break;
    }
  }
  return found;
}

std::vector<Measurement> lightsWet(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& water : in.layout.fixtures) {
    if (!takesWater(water)) continue;
    std::optional<Length> head;
    for (const Item& i : in.layout.on_walls)
      if (i.item.kind == "shower-head" && i.item.shower == water.fixture.id &&
          i.item.status != Status::remove)
        head = std::max(head.value_or(i.top), i.top);
    if (!head) continue;
    for (const Light& light : lightsOf(in.layout)) {
      if (!light.bottom || *light.bottom > *head || !gapBetween(light.outline, water.footprint).overlap)
        continue;
      Measurement m{.subjects = {light.id, water.fixture.id}, .places = {pointAt(light.at)}};
      listed(m, *light.facts, false);
      found.push_back(std::move(m));
    }
  }
  return found;
}

std::vector<Measurement> switchesNotInWater(const CheckInput& in) {
  std::vector<Measurement> found;
  const bool water = std::any_of(in.layout.fixtures.begin(), in.layout.fixtures.end(), takesWater);
  if (!water) return found;
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i) || !is(i.item, WallUse::control)) continue;
    Measurement m{.subjects = {i.item.id}, .measured = true, .places = {lineFrom(i.left, i.right)}};
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!takesWater(f) || !isIn(in, i, f)) continue;
      m.subjects.push_back(f.fixture.id);
      m.measured.reset();
      if (const auto listed = yesNo(i.item.facts, "shower_assembly"))
        m.measured = *listed;
      else
        m.fact = "shower_assembly";
      break;
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
