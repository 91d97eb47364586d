#include "core/rules/checks/ca_electrical.h"

#include <algorithm>

#include "core/rules/checks/electrical_places.h"

namespace elbowroom::checks {
namespace {

using Item = PlacedWallItem;

// As near as `least` on a condition that the plan states as a yes or no.
struct Condition {
  std::optional<bool> holds;
  const char *fact, *detail;  // what is asked, and why
};
void orNearerIf(const Condition& condition, Measurement& m, Length distance, Length limit, Length least) {
  if (condition.holds == true && distance < limit) m.limit = least;
  if (condition.holds || distance >= limit || distance < least) {
    m.measured = distance;
  } else {
    m.fact = condition.fact;
    m.detail = condition.detail;
  }
}

bool switchesLight(const Item& i) { return i.item.kind == "switch" || i.item.kind == "combined-switch"; }

}  // namespace

std::vector<Measurement> receptaclesFarFromWater(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  for (const Item* i : receptaclesOf(in.layout)) {
    std::optional<Measurement> nearest;
    Length least;
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      bool asks = false;
      const auto way = wayToWater(in.layout, *i, water, asks);
      const Gap straight = gapBetween(widthOf(*i), water.footprint);
      const bool glass_decides =
          asks && straight.distance < limitOf(in) && (!way || way->distance >= limitOf(in));
      if (!way && !glass_decides) continue;
      const Gap& gap = glass_decides ? straight : *way;
      if (nearest && gap.distance >= least) continue;
      Measurement m{.subjects = {i->item.id, water.fixture.id}, .places = {lineFrom(gap.from, gap.to)}};
      if (glass_decides) {
        m.subjects = {water.fixture.id, i->item.id};
        m.fact = "glass.height";
        m.detail = "glass-height-not-stated";
      } else {
        orNearerIf({yesNo(i->item.facts, "no_farther_place"), "no_farther_place", "nearer-if-no-place"}, m,
                   gap.distance, limitOf(in), in.rule->sizes[0]);
      }
      nearest = std::move(m);
      least = gap.distance;
    }
    if (nearest) found.push_back(std::move(*nearest));
  }
  return found;
}

std::vector<Measurement> receptacleAtAnyBasin(const CheckInput& in) {
  const std::vector<const Item*> receptacles = receptaclesOf(in.layout);
  std::optional<Measurement> best;
  Length least;
  ElementId open;
  bool wider_may_do = false;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f)) continue;
    if (!best)
      best = {.subjects = {f.fixture.id}, .places = {pointAt(f.center)}, .detail = "receptacle-not-placed"};
    const std::vector<Bowl> bowls = bowlsOf(f);
    if (bowls.empty() && !receptacles.empty() && !best->measured) {
      best->detail = "basins-not-stated";
      best->fact = "basins";
    }
    for (const Bowl& bowl : bowls)
      for (const Item* i : receptacles) {
        const Gap gap = gapFromPoint(middleOf(*i), bowl.least);
        if (gap.distance > limitOf(in) && gapFromPoint(middleOf(*i), bowl.most).distance <= limitOf(in)) {
          wider_may_do = true;
          open = f.fixture.id;
        }
        if (best->measured && gap.distance >= least) continue;
        best = {.subjects = {i->item.id, f.fixture.id},
                .measured = gap.distance,
                .places = {lineFrom(gap.from, gap.to)}};
        least = gap.distance;
      }
  }
  if (!best) return {};
  if (best->measured && least > limitOf(in) && wider_may_do) {
    best->measured.reset();
    best->subjects = {open};
    best->fact = "bowl_width";
  }
  return {*best};
}

std::vector<Measurement> receptaclesGfciAtWater(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  for (const Item* i : receptaclesOf(in.layout)) {
    const PlacedFixture* nearest = nullptr;
    Gap least;
    for (const PlacedFixture& f : in.layout.fixtures) {
      if (!takesWater(f) && !(counts(f) && isBasin(f) && !f.footprint.empty())) continue;
      const Gap gap = gapBetween(widthOf(*i), f.footprint);
      if (gap.distance > in.rule->sizes[0] || (nearest != nullptr && gap.distance >= least.distance))
        continue;
      nearest = &f;
      least = gap;
    }
    if (nearest == nullptr) continue;
    Measurement m{.subjects = {i->item.id, nearest->fixture.id}, .places = {lineFrom(least.from, least.to)}};
    if (const auto gfci = yesNo(i->item.facts, "gfci"))
      m.measured = *gfci;
    else
      m.fact = "gfci";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> bowlsBeforeReceptacles(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f) || f.wall < 0) continue;
    const auto along = [&](Point p) { return dot(p - f.back_center, rightOf(f)); };
    for (const Bowl& bowl : bowlsOf(f))
      for (const Item* i : receptaclesOf(in.layout)) {
        if (i->wall != f.wall || (f.fixture.height && i->top <= *f.fixture.height)) continue;
        const Length half = bowl.least.size() < 2 ? Length{} : distance(bowl.least[0], bowl.least[1]) / 2;
        const Length middle = along(centroidOf(bowl.least));
        const auto [from, to] = std::minmax({along(i->left), along(i->right)});
        if (!meet(from, to, middle - half, middle + half)) continue;
        Measurement m{.subjects = {f.fixture.id, i->item.id}, .places = {placeOf(*i)}};
        const OnWall* on = std::get_if<OnWall>(&f.fixture.placement);
        if (const auto edge = lengthOf(f.fixture.facts, "bowl_from_wall"))
          m.measured = *edge + (on == nullptr ? Length{} : on->gap);
        else
          m.fact = "bowl_from_wall";
        found.push_back(std::move(m));
      }
  }
  return found;
}

std::vector<Measurement> switchesFarFromWater(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.rule == nullptr || in.rule->sizes.empty()) return found;
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i) || !switchesLight(i)) continue;
    std::optional<Measurement> nearest;
    Length least;
    for (const PlacedFixture& water : in.layout.fixtures) {
      if (!takesWater(water)) continue;
      const Gap gap = gapBetween(widthOf(i), water.footprint);
      if (nearest && gap.distance >= least) continue;
      nearest = {.subjects = {i.item.id, water.fixture.id}, .places = {lineFrom(gap.from, gap.to)}};
      least = gap.distance;
    }
    if (!nearest) continue;
    orNearerIf({yesNo(i.item.facts, "switch_gfci"), "switch_gfci", "nearer-on-gfci"}, *nearest, least,
               limitOf(in), in.rule->sizes[0]);
    found.push_back(std::move(*nearest));
  }
  return found;
}

}  // namespace elbowroom::checks
