#include "core/rules/checks/stated_figures.h"

#include <algorithm>

#include "core/plan/catalogue.h"
#include "core/rules/checks/fans.h"
#include "core/rules/checks/wet.h"

namespace elbowroom::checks {

namespace {

Measurement of(const PlacedFixture& f) {
  return {.subjects = {f.fixture.id}, .places = {pointAt(f.center), {Place::Kind::zone, f.footprint}}};
}

bool hasCurb(const PlacedFixture& f) { return isShower(f) && f.fixture.curb != Length{}; }
bool isWasher(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::washer; }
bool showerOrBath(const PlacedFixture& f) { return holdsWater(f.fixture.kind); }

std::optional<Quantity> stated(const Facts& facts, std::string_view key) {
  const auto at = facts.find(std::string(key));
  if (at == facts.end()) return std::nullopt;
  return std::visit(
      [](const auto& value) -> std::optional<Quantity> {
        if constexpr (std::is_same_v<std::decay_t<decltype(value)>, std::string>)
          return std::nullopt;
        else
          return value;
      },
      at->second);
}

enum class Ask { yes, no };

template <typename Wanted>
std::vector<Measurement> figures(const CheckInput& in, Wanted wanted, std::string_view key, Ask ask) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !wanted(f)) continue;
    Measurement m = of(f);
    m.measured = stated(f.fixture.facts, key);
    if (!m.measured && ask == Ask::no) continue;
    if (!m.measured) m.fact = key;
    found.push_back(std::move(m));
  }
  return found;
}

const Facts& factsOfFan(const Layout& layout, const ElementId& id) {
  if (const CeilingItem* item = findCeilingItem(layout.option, id)) return item->facts;
  return findWallItem(layout.option, id)->facts;
}

std::vector<Measurement> ofFans(const CheckInput& in, std::string_view key, Ask ask) {
  std::vector<Measurement> found;
  for (const FanThere& fan : fansOf(in.layout)) {
    Measurement m{.subjects = {fan.id}, .measured = stated(*fan.facts, key), .places = {fan.place}};
    if (!m.measured && ask == Ask::no) continue;
    if (!m.measured) m.fact = key;
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace

std::vector<Measurement> curbsAboveDrains(const CheckInput& in) {
  return figures(in, hasCurb, "curb_above_drain", Ask::yes);
}
std::vector<Measurement> sidesAboveCurbs(const CheckInput& in) {
  return figures(in, hasCurb, "sides_above_curb", Ask::no);
}
std::vector<Measurement> linersUp(const CheckInput& in) { return figures(in, isShower, "liner_up", Ask::no); }

std::vector<Measurement> curbsThere(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isShower(f)) continue;
    Measurement m = of(f);
    if (f.fixture.curb)
      m.measured = *f.fixture.curb > Length{};
    else
      m.fact = "curb";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> showerFalls(const CheckInput& in) {
  return figures(in, isShower, "floor_slope", Ask::yes);
}
std::vector<Measurement> enclosureGlass(const CheckInput& in) {
  return figures(
      in, [](const PlacedFixture& f) { return !f.fixture.glass.empty(); }, "safety_glass", Ask::yes);
}
std::vector<Measurement> showerValves(const CheckInput& in) {
  return figures(
      in, [&](const PlacedFixture& f) { return takesShowers(in.layout, f); }, "valve_limit", Ask::yes);
}
std::vector<Measurement> bathValves(const CheckInput& in) {
  return figures(
      in, [&](const PlacedFixture& f) { return isBath(f) && !takesShowers(in.layout, f); }, "valve_limit",
      Ask::yes);
}

std::vector<Measurement> fanFlows(const CheckInput& in) {
  std::vector<Measurement> found = ofFans(in, "flow_cfm", Ask::yes);
  for (Measurement& m : found) {
    if (!m.measured || in.rule == nullptr) continue;
    const Facts& fan = factsOfFan(in.layout, m.subjects.front());
    const Amount flow = std::get<Amount>(*m.measured), now_and_then = std::get<Amount>(in.rule->limit);
    const Amount always = std::min(now_and_then, Amount::of(20));
    const auto runs_always = yesNo(fan, "continuous");
    if (runs_always == true) {
      m.limit = always;
      m.detail = "fan-runs-always";
    } else if (!runs_always && flow < always) {
      m.limit = always;
    } else if (!runs_always && flow < now_and_then) {
      m.measured.reset();
      m.fact = "continuous";
    }
  }
  return found;
}

std::vector<Measurement> fansOutdoors(const CheckInput& in) {
  return ofFans(in, "ducted_outdoors", Ask::yes);
}
std::vector<Measurement> fanOutletOpenings(const CheckInput& in) {
  return ofFans(in, "outlet_from_opening", Ask::no);
}
std::vector<Measurement> fanOutletBoundaries(const CheckInput& in) {
  return ofFans(in, "outlet_from_boundary", Ask::no);
}
std::vector<Measurement> fanOutletIntakes(const CheckInput& in) {
  std::vector<Measurement> found = ofFans(in, "outlet_from_intake", Ask::no);
  for (Measurement& m : found) {
    const auto above = lengthOf(factsOfFan(in.layout, m.subjects.front()), "outlet_above_intake");
    if (!above || in.rule == nullptr || in.rule->sizes.empty() || *above < in.rule->sizes[0]) continue;
    if (std::get<Length>(*m.measured) >= limitOf(in)) continue;
    m.measured = above;
    m.limit = in.rule->sizes[0];
    m.detail = "outlet-above-intake";
  }
  return found;
}

std::vector<Measurement> standpipes(const CheckInput& in) {
  return figures(in, isWasher, "standpipe_height", Ask::no);
}
std::vector<Measurement> washerTraps(const CheckInput& in) {
  return figures(in, isWasher, "washer_trap_height", Ask::no);
}

std::vector<Measurement> heaterFuels(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::heater) continue;
    Measurement m = of(f);
    const auto burns = yesNo(f.fixture.facts, "burns_fuel"),
               sealed = yesNo(f.fixture.facts, "sealed_combustion");
    if (burns == false || sealed == true)
      m.measured = true;
    else if (burns == true && sealed == false)
      m.measured = false;
    else
      m.fact = burns ? "sealed_combustion" : "burns_fuel";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> accessPanels(const CheckInput& in) {
  return figures(in, showerOrBath, "access_panel", Ask::no);
}
std::vector<Measurement> pumpPanels(const CheckInput& in) {
  return figures(
      in, [](const PlacedFixture& f) { return isBath(f) && yesNo(f.fixture.facts, "pumped") == true; },
      "access_panel", Ask::yes);
}

std::vector<Measurement> panelsThere(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !showerOrBath(f)) continue;
    const auto& items = in.layout.on_walls;
    const bool on_wall = std::any_of(items.begin(), items.end(), [&](const PlacedWallItem& i) {
      return i.item.kind == "access-panel" && i.item.status != Status::remove && i.wall >= 0 &&
             i.wall == f.wall;
    });
    const auto side = lengthOf(f.fixture.facts, "access_panel");
    Measurement m = of(f);
    if (on_wall || side)
      m.measured = on_wall || *side > Length{};
    else
      m.fact = "access_panel";
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> roughIns(const CheckInput& in) {
  return figures(
      in, [](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; }, "rough_in", Ask::yes);
}

std::vector<Measurement> showerSeatDepths(const CheckInput& in) {
  return figures(in, isShower, "seat_depth", Ask::no);
}

std::vector<Measurement> neededFixtures(const CheckInput& in) {
  const auto& fixtures = in.layout.fixtures;
  if (in.layout.room.empty()) return {};
  const auto any = [&](auto wanted) {
    return std::any_of(fixtures.begin(), fixtures.end(),
                       [&](const PlacedFixture& f) { return counts(f) && wanted(f); });
  };
  if (!any([](const PlacedFixture&) { return true; })) return {};
  const bool all = any([](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; }) &&
                   any(isBasin) && any(showerOrBath);
  const auto only = yesNo(in.layout.option.room.facts, "only_bathroom");
  if (!all && only == false) return {};
  Measurement m{.subjects = {}, .places = {pointAt(centroidOf(in.layout.room))}};
  if (all || only)
    m.measured = all;
  else
    m.fact = "only_bathroom";
  return {m};
}

}  // namespace elbowroom::checks
