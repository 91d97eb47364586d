#include "core/rules/checks/electrical.h"

#include <algorithm>

#include "core/plan/wall_catalogue.h"
#include "core/rules/checks/electrical_places.h"

namespace elbowroom::checks {
namespace {

using Item = PlacedWallItem;

struct Served {
  Bowl bowl;
  const Item* by = nullptr;
  bool beside = false;
  Gap least, most;  // to the bowl at its narrowest and at its widest
};

// How much suits of what makes a receptacle the one of a basin.
int suitOf(const Layout& layout, const PlacedFixture& f, const Item& i) {
  const bool beside = isBesideBasin(layout, f, i.wall);
  const bool low = f.fixture.height && *f.fixture.height - boxHeightOf(i) > kBasinDrop;
  return beside && !low ? 2 : beside ? 1 : 0;
}

Served servedOf(const Layout& layout, const std::vector<const Item*>& receptacles, Bowl bowl) {
  Served best{std::move(bowl), nullptr, false, {}, {}};
  int best_suit = -1;
  for (const Item* i : receptacles) {
    const int suit = suitOf(layout, *best.bowl.fixture, *i);
    const Gap gap = gapFromPoint(middleOf(*i), best.bowl.least);
    if (suit < best_suit || (suit == best_suit && gap.distance >= best.least.distance)) continue;
    best_suit = suit;
    best.by = i;
    best.beside = suit > 0;
    best.least = gap;
  }
  if (best.by != nullptr) best.most = gapFromPoint(middleOf(*best.by), best.bowl.most);
  return best;
}

// One measurement per basin; `make` is asked where a receptacle serves it. What is missing is asked for once,
// by the rule of the distance.
template <typename Make>
std::vector<Measurement> eachBasin(const CheckInput& in, bool asks, Make make) {
  std::vector<Measurement> found;
  const std::vector<const Item*> receptacles = receptaclesOf(in.layout);
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f)) continue;
    const std::vector<Bowl> bowls = bowlsOf(f);
    if (!asks && (bowls.empty() || receptacles.empty())) continue;
    if (bowls.empty()) {
      found.push_back({.subjects = {f.fixture.id},
                       .places = {pointAt(f.center)},
                       .detail = "basins-not-stated",
                       .fact = "basins"});
      continue;
    }
    for (const Bowl& bowl : bowls) {
      const Served served = servedOf(in.layout, receptacles, bowl);
      Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(centroidOf(bowl.least))}};
      if (served.by == nullptr) {
        m.detail = "receptacle-not-placed";
      } else {
        m.subjects = {served.by->item.id, f.fixture.id};
        m.places = {lineFrom(middleOf(*served.by), served.least.to)};
        make(m, served);
      }
      found.push_back(std::move(m));
    }
  }
  return found;
}

void besideCounter(Measurement& m, const Served& s, bool above) {
  if (const auto top = s.bowl.fixture->fixture.height) {
    const Length over = boxHeightOf(*s.by) - *top;
    m.measured = std::max(Length{}, above ? over : -over);
    return;
  }
  m.subjects = {s.bowl.fixture->fixture.id, s.by->item.id};
  m.fact = "height";
}

template <typename Wanted, typename Make>
std::vector<Measurement> eachReceptacle(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  for (const Item* i : receptaclesOf(in.layout)) {
    if (!wanted(*i)) continue;
    Measurement m{.subjects = {i->item.id}, .places = {lineFrom(i->left, i->right)}};
    make(m, *i);
    found.push_back(std::move(m));
  }
  return found;
}

void stated(Measurement& m, const Facts& facts, const char* fact) {
  if (const auto yes = yesNo(facts, fact))
    m.measured = *yes;
  else
    m.fact = fact;
}

template <typename Make>
std::vector<Measurement> eachPumpedBath(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBath(f) || yesNo(f.fixture.facts, "pumped") != true) continue;
    Measurement m{.subjects = {f.fixture.id}, .places = {pointAt(f.center)}};
    make(m, f);
    found.push_back(std::move(m));
  }
  return found;
}

// What concerns the room as a whole is shown in its middle.
Measurement ofRoom(const CheckInput& in) {
  return {.subjects = {}, .places = {pointAt(centroidOf(in.layout.room))}};
}

bool isLight(const WallItem& i) {
  return is(i, WallUse::lamp) || i.kind == "lit-mirror" || i.kind == "sconce-box";
}

}  // namespace

std::vector<Measurement> basinReceptacles(const CheckInput& in) {
  return eachBasin(in, true, [&](Measurement& m, const Served& s) {
    const bool same = s.least.distance == s.most.distance;
    if (same || s.least.distance <= limitOf(in)) {
      m.measured = s.least.distance;
      if (!same) m.detail = "bowl-taken-15";
    } else if (s.most.distance > limitOf(in)) {
      m.measured = s.most.distance;
      m.detail = "bowl-taken-widest";
    } else {
      m.subjects = {s.bowl.fixture->fixture.id, s.by->item.id};
      m.fact = "bowl_width";
    }
  });
}

std::vector<Measurement> basinReceptacleWalls(const CheckInput& in) {
  return eachBasin(in, false, [](Measurement& m, const Served& s) { m.measured = s.beside; });
}

std::vector<Measurement> basinReceptacleDrops(const CheckInput& in) {
  return eachBasin(in, false, [](Measurement& m, const Served& s) { besideCounter(m, s, false); });
}

std::vector<Measurement> basinReceptacleRises(const CheckInput& in) {
  return eachBasin(in, false, [](Measurement& m, const Served& s) { besideCounter(m, s, true); });
}

std::vector<Measurement> basinReceptaclesAcross(const CheckInput& in) {
  std::vector<Measurement> found = eachBasin(in, false, [&](Measurement& m, const Served& s) {
    const PlacedFixture& f = *s.bowl.fixture;
    const auto along = [&](Point p) { return dot(p - f.center, rightOf(f)); };
    const Length at = along(middleOf(*s.by)), bowl = along(centroidOf(s.bowl.least));
    m.measured = true;
    for (const Bowl& other : bowlsOf(f)) {
      const Length between = along(centroidOf(other.least));
      if (abs(between - bowl) > kContact && std::min(at, bowl) < between && between < std::max(at, bowl))
        m.measured = false;
    }
  });
  // A counter with one basin has no other to reach across.
  std::erase_if(found, [&](const Measurement& m) {
    const Fixture* f = m.subjects.size() < 2 ? nullptr : findFixture(in.layout.option, m.subjects[1]);
    return f == nullptr || !m.measured || f->basins.value_or(1) < 2;
  });
  return found;
}

std::vector<Measurement> receptaclesGfci(const CheckInput& in) {
  const bool bathroom = isBathroom(in.layout);
  return eachReceptacle(
      in, [&](const Item&) { return bathroom; },
      [](Measurement& m, const Item& i) { stated(m, i.item.facts, "gfci"); });
}

std::vector<Measurement> receptaclesTamperResistant(const CheckInput& in) {
  return eachReceptacle(
      in, [](const Item&) { return true; },
      [](Measurement& m, const Item& i) { stated(m, i.item.facts, "tamper_resistant"); });
}

std::vector<Measurement> receptaclesNotFacingUp(const CheckInput& in) {
  return eachReceptacle(
      in, [](const Item& i) { return yesNo(i.item.facts, "face_up").has_value(); },
      [](Measurement& m, const Item& i) {
        if (yesNo(i.item.facts, "face_up") == false)
          m.measured = true;
        else
          stated(m, i.item.facts, "counter_assembly");
      });
}

std::vector<Measurement> receptacleCircuits(const CheckInput& in) {
  const bool bathroom = isBathroom(in.layout);
  return eachReceptacle(
      in, [&](const Item&) { return bathroom; },
      [](Measurement& m, const Item& i) {
        if (const auto amperes = amountOf(i.item.facts, "circuit"))
          m.measured = *amperes;
        else
          m.fact = "circuit";
      });
}

std::vector<Measurement> circuitsOfBathrooms(const CheckInput& in) {
  if (!isBathroom(in.layout) || receptaclesOf(in.layout).empty()) return {};
  Measurement m = ofRoom(in);
  if (const auto serves = wordOf(in.layout.option.room.facts, "circuit_serves"))
    m.measured = *serves != "more";
  else
    m.fact = "circuit_serves";
  return {m};
}

std::vector<Measurement> panelsElsewhere(const CheckInput& in) {
  if (!isBathroom(in.layout) || in.layout.room.empty()) return {};
  Measurement m = ofRoom(in);
  m.measured = true;
  for (const Item& i : in.layout.on_walls) {
    if (!counts(i) || i.item.kind != "breaker-panel") continue;
    m = {.subjects = {i.item.id}, .measured = false, .places = {lineFrom(i.left, i.right)}};
  }
  return {m};
}

std::vector<Measurement> pumpCircuits(const CheckInput& in) {
  return eachPumpedBath(
      in, [](Measurement& m, const PlacedFixture& f) { stated(m, f.fixture.facts, "own_circuit"); });
}

std::vector<Measurement> pumpsGfci(const CheckInput& in) {
  return eachPumpedBath(
      in, [](Measurement& m, const PlacedFixture& f) { stated(m, f.fixture.facts, "pump_gfci"); });
}

std::vector<Measurement> pumpReceptacles(const CheckInput& in) {
  return eachPumpedBath(in, [](Measurement& m, const PlacedFixture& f) {
    if (const auto away = lengthOf(f.fixture.facts, "pump_receptacle"))
      m.measured = *away;
    else
      m.fact = "pump_receptacle";
  });
}

std::vector<Measurement> floorHeatGfci(const CheckInput& in) {
  const Facts& facts = in.layout.option.room.facts;
  if (in.layout.room.empty() || yesNo(facts, "floor_heat") != true) return {};
  Measurement m = ofRoom(in);
  stated(m, facts, "floor_heat_gfci");
  return {m};
}

std::vector<Measurement> lightsSwitched(const CheckInput& in) {
  if (!isBathroom(in.layout) || in.layout.room.empty()) return {};
  const Option& option = in.layout.option;
  Measurement m = ofRoom(in);
  const auto stays = [](const WallItem& i) { return i.status != Status::remove; };
  const bool lit = std::any_of(option.on_ceiling.begin(), option.on_ceiling.end(),
                               [](const CeilingItem& i) { return i.kind == "light"; }) ||
                   std::any_of(option.on_walls.begin(), option.on_walls.end(),
                               [&](const WallItem& i) { return stays(i) && isLight(i); });
  const bool switched = std::any_of(option.on_walls.begin(), option.on_walls.end(), [&](const WallItem& i) {
    return stays(i) && is(i, WallUse::control) && i.kind != "timer-switch" && i.kind != "humidity-switch";
  });
  if (const auto said = yesNo(option.room.facts, "switch_at_entry"))
    m.measured = *said;
  else if (lit && switched)
    m.measured = true;
  else
    m.fact = "switch_at_entry";
  return {m};
}

}  // namespace elbowroom::checks
