#include "core/rules/checks/people.h"

#include <algorithm>

#include "core/people/body.h"
#include "core/rules/check.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/fronts.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

using People = std::vector<const Person*>;

template <typename Keep>
People peopleWhere(const CheckInput& in, Keep keep) {
  People kept;
  for (const Person& p : in.layout.settings.people)
    if (keep(p)) kept.push_back(&p);
  return kept;
}
bool anybody(const Person&) { return true; }
bool child(const Person& p) { return p.child; }
bool inChair(const Person& p) { return p.chair.has_value(); }

// Fills in the limit of the person whom it serves worst, and who does not fit. `need` is a person's least
// figure, or the greatest one when `at_most`.
template <typename Need>
void holdAgainst(Measurement& m, const People& people, Need need, bool at_most = false) {
  const Length there = std::get<Length>(*m.measured);
  const Person* worst = nullptr;
  People short_of_it;
  for (const Person* p : people) {
    const Length limit = need(*p);
    if (worst == nullptr || (at_most ? limit < need(*worst) : limit > need(*worst))) worst = p;
    if (at_most ? there > limit + kMetTolerance : there < limit - kMetTolerance) short_of_it.push_back(p);
  }
  m.limit = need(*worst);
  m.detail = short_of_it.empty() ? "fits:" + worst->name : "fits-not:" + namesOf(short_of_it);
}

template <typename Need>
void holdAgainstStandIn(Measurement& m, const Person& stand_in, Need need, const char* detail) {
  m.limit = need(stand_in);
  m.detail = detail;
}

Length limitOf(const Measurement& m) { return std::get<Length>(*m.limit); }

// Straight ahead of every fixture wanted; `hold` fills in the limit.
template <typename Wanted, typename Hold>
std::vector<Measurement> aheadOfEach(const CheckInput& in, Wanted wanted, Hold hold) {
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !wanted(f) || in.layout.room.empty()) continue;
    const Ahead& ahead = in.around[i].front;
    Measurement m{.subjects = {f.fixture.id, idOf(in.layout, ahead)}, .measured = ahead.distance};
    hold(m, f);
    m.places = placesOf(f.front, f.facing, ahead, limitOf(m));
    found.push_back(std::move(m));
  }
  return found;
}

bool flushToilet(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; }

std::vector<Place> acrossSeat(const PlacedFixture& f, Length left, Length right) {
  const Point middle = midpoint(f.center, f.front_center);
  return {lineFrom(middle + left * leftOf(f), middle + right * rightOf(f))};
}

// The rim of every basin; unset where the plan does not state its height.
template <typename Hold>
std::vector<Measurement> rims(const CheckInput& in, Hold hold) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f)) continue;
    Measurement m{.subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}};
    if (f.fixture.height) {
      m.measured = *f.fixture.height;
      hold(m);
    } else {
      m.fact = "height";
    }
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

Length kneesAhead(const PlacedFixture& f, const Person& p) {
  // One who sits back leans against the tank.
  const Length seat = f.fixture.depth - f.fixture.tank_depth.value_or(8_in);
  return std::max(Length{}, kneesBeforeBack(p) - seat);
}

std::vector<Measurement> kneesAtToilets(const CheckInput& in) {
  const People people = peopleWhere(in, anybody);
  return aheadOfEach(in, flushToilet, [&](Measurement& m, const PlacedFixture& f) {
    const auto need = [&](const Person& p) { return kneesAhead(f, p); };
    if (people.empty())
      holdAgainstStandIn(m, tallMan(), need, "for-tall-man");
    else
      holdAgainst(m, people, need);
  });
}

std::vector<Measurement> elbowsAtToilets(const CheckInput& in) {
  const People people = peopleWhere(in, anybody);
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !flushToilet(f) || in.layout.room.empty()) continue;
    const Ahead &left = in.around[i].left, &right = in.around[i].right;
    Measurement m{.subjects = {f.fixture.id}, .measured = left.distance + right.distance};
    m.places = acrossSeat(f, left.distance, right.distance);
    const auto need = [](const Person& p) { return elbowBreadth(p); };
    if (people.empty())
      holdAgainstStandIn(m, tallMan(), need, "for-tall-man");
    else
      holdAgainst(m, people, need);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> bendingAtBasins(const CheckInput& in) {
  const People people = peopleWhere(in, anybody);
  if (people.empty()) return {};
  return aheadOfEach(in, isBasin, [&](Measurement& m, const PlacedFixture& f) {
    holdAgainst(m, people, [&](const Person& p) {
      if (!p.chair || !f.fixture.knee_space) return bendingDepth(p);
      // Measured to the toes, so the toes are what goes under, and they go as far as the knees behind them do.
      const Length with_knees = f.fixture.knee_space->depth + toesAhead();
      return bendingDepth(p) - std::min(f.fixture.knee_space->toe.value_or(with_knees), with_knees);
    });
  });
}

std::vector<Measurement> kneelingAtBaths(const CheckInput& in) {
  const People people = peopleWhere(in, [](const Person& p) { return kneels(p); });
  if (people.empty() && !in.layout.settings.people.empty()) return {};
  const auto need = [](const Person& p) { return kneelingDepth(p); };
  Measurement sample{.subjects = {}, .measured = Length{}};
  if (people.empty())
    holdAgainstStandIn(sample, medianWoman(), need, "for-median-woman");
  else
    holdAgainst(sample, people, need);
  std::vector<Measurement> found = bathFrontsFor(in, limitOf(sample));
  for (Measurement& m : found) {
    m.limit = sample.limit;
    if (people.empty())
      m.detail = sample.detail;
    else
      holdAgainst(m, people, need);
  }
  return found;
}

std::vector<Measurement> rimsOfBaths(const CheckInput& in) {
  const bool nobody = in.layout.settings.people.empty();
  const People adults = peopleWhere(in, [](const Person& p) { return kneels(p); });
  if (!nobody && (adults.empty() || peopleWhere(in, child).empty())) return {};
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBath(f)) continue;
    Measurement m{.subjects = {f.fixture.id}, .measured = std::nullopt, .places = {lineFrom(f.front.a, f.front.b)}};
    if (!f.fixture.height) {
      m.fact = "height";
    } else {
      m.measured = *f.fixture.height;
      const auto need = [](const Person& p) { return kneelingHip(p); };
      if (nobody)  // 16 in: about the middle of all subjects (5 % 14.3, 95 % 17.8)
        m.limit = 16_in, m.detail = "for-anybody";
      else
        holdAgainst(m, adults, need, true);
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> passingAtBasins(const CheckInput& in) {
  if (in.layout.settings.people.size() < 2) return {};
  return aheadOfEach(in, isBasin, [](Measurement& m, const PlacedFixture&) {
    m.limit = standingDepth() + passingDepth();
  });
}

std::vector<Measurement> helpingAtBasins(const CheckInput& in) {
  if (peopleWhere(in, child).empty() || peopleWhere(in, [](const Person& p) { return !p.child; }).empty()) return {};
  return aheadOfEach(in, isBasin,
                     [](Measurement& m, const PlacedFixture&) { m.limit = standingDepth() * 2; });
}

std::vector<Measurement> helperBesideToilets(const CheckInput& in) {
  const People chairs = peopleWhere(in, inChair);
  if (chairs.empty()) return {};
  std::vector<Measurement> found;
  for (std::size_t i = 0; i < in.layout.fixtures.size(); ++i) {
    const PlacedFixture& f = in.layout.fixtures[i];
    if (!counts(f) || !flushToilet(f) || in.layout.room.empty()) continue;
    const bool left = in.around[i].left.distance >= in.around[i].right.distance;
    const Ahead& side = left ? in.around[i].left : in.around[i].right;
    const Direction out = left ? leftOf(f) : rightOf(f);
    Measurement m{.subjects = {f.fixture.id, idOf(in.layout, side)},
                  .measured = std::max(Length{}, side.distance - f.fixture.width / 2)};
    m.limit = standingDepth();
    m.places = placesOf(left ? f.left_side : f.right_side, out,
                        Ahead{std::get<Length>(*m.measured), side.at, side.hit}, standingDepth());
    m.detail = "helper-for:" + namesOf(chairs);
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> basinHeightsForAdults(const CheckInput& in) {
  const People adults = peopleWhere(in, [](const Person& p) { return !p.child && !p.chair; });
  if (adults.empty()) return {};
  return rims(in, [&](Measurement& m) {
    const Length rim = std::get<Length>(*m.measured);
    const auto off = [&](const Person& p) {
      const HeightBand band = workingHeight(p);
      return std::max(band.low - rim, rim - band.high);
    };
    const Person* worst = *std::max_element(adults.begin(), adults.end(),
                                            [&](const Person* a, const Person* b) { return off(*a) < off(*b); });
    People short_of_it;
    for (const Person* p : adults)
      if (off(*p) > kMetTolerance) short_of_it.push_back(p);
    m.limit = workingHeight(*worst).low;
    m.limit_high = workingHeight(*worst).high;
    m.detail = short_of_it.empty() ? "fits:" + worst->name : "fits-not:" + namesOf(short_of_it);
  });
}

std::vector<Measurement> basinHeightsForChildren(const CheckInput& in) {
  const People children = peopleWhere(in, child);
  if (children.empty()) return {};
  return rims(in, [&](Measurement& m) {
    holdAgainst(m, children, [](const Person& p) { return workingHeight(p).high; }, true);
    if (m.detail.rfind("fits-not:", 0) == 0) m.detail.replace(0, 8, "step-for");
  });
}

std::vector<Measurement> basinHeightsForChairs(const CheckInput& in) {
  const People chairs = peopleWhere(in, inChair);
  if (chairs.empty()) return {};
  return rims(in, [&](Measurement& m) {
    holdAgainst(m, chairs, [](const Person& p) { return workingHeight(p).high; }, true);
  });
}

std::vector<Measurement> basinHeightsForAnybody(const CheckInput& in) {
  if (!in.layout.settings.people.empty()) return {};
  return rims(in, [](Measurement&) {});
}

std::vector<Measurement> topShelves(const CheckInput& in) {
  const People people = peopleWhere(in, anybody);
  if (people.empty()) return {};
  const Person* tallest = *std::max_element(
      people.begin(), people.end(), [](const Person* a, const Person* b) { return reachUp(*a) < reachUp(*b); });
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    const bool stores = f.fixture.kind == FixtureKind::linenCloset || f.fixture.kind == FixtureKind::cabinet;
    if (!counts(f) || !stores || !f.fixture.height || *f.fixture.height <= 48_in) continue;
    Measurement m{.subjects = {f.fixture.id}, .measured = *f.fixture.height};
    m.limit = reachUp(*tallest);
    m.places = {lineFrom(f.front.a, f.front.b)};
    m.detail = "fits:" + tallest->name;
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
