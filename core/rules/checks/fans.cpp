#include "core/rules/checks/fans.h"

#include <algorithm>
#include <cmath>

#include "core/rules/checks/air.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

// What the fans move together against `need`; what is not stated is asked of the first that does not say.
std::vector<Measurement> roomAir(const CheckInput& in, Amount need) {
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {}};
  m.limit = need;
  Amount together;
  ElementId silent;
  for (const FanThere& fan : fansOf(in.layout)) {
    m.subjects.push_back(fan.id);
    m.places.push_back(fan.place);
    if (const auto flow = amountOf(*fan.facts, "flow_cfm"))
      together.thousandths += flow->thousandths;
    else if (silent.empty())
      silent = fan.id;
  }
  if (m.subjects.empty()) return {};
  if (silent.empty() || together >= need) {
    m.measured = together;
  } else {
    m.subjects = {silent};
    m.fact = "flow_cfm";
  }
  return {m};
}

AirUsers usersOf(const Layout& layout) {
  AirUsers users;
  for (const PlacedFixture& f : layout.fixtures) {
    if (!counts(f)) continue;
    if (f.fixture.kind == FixtureKind::toilet) ++users.toilets;
    if (isShower(f)) ++users.showers;
    if (isBath(f)) ++(yesNo(f.fixture.facts, "pumped") == true ? users.pumped_baths : users.baths);
  }
  return users;
}

}  // namespace

std::vector<FanThere> fansOf(const Layout& layout) {
  std::vector<FanThere> fans;
  for (const CeilingItem& item : layout.option.on_ceiling)
    if (item.kind == "fan") fans.push_back({item.id, &item.facts, pointAt(item.at)});
  for (const PlacedWallItem& i : layout.on_walls) {
    if (i.item.kind != "exhaust" || i.item.status == Status::remove) continue;
    fans.push_back({i.item.id, &i.item.facts, lineFrom(i.left, i.right)});
  }
  return fans;
}

std::optional<AirSpace> airSpaceOf(const Layout& layout) {
  const Ceiling& ceiling = layout.option.room.ceiling;
  if (layout.room.empty() || !ceiling.height || !ceiling.slopes.empty()) return std::nullopt;
  return AirSpace{layout.room_area, *ceiling.height};
}

std::optional<Amount> flowOf(const Layout& layout) {
  const std::vector<FanThere> fans = fansOf(layout);
  Amount together;
  for (const FanThere& fan : fans) {
    const auto flow = amountOf(*fan.facts, "flow_cfm");
    if (!flow) return std::nullopt;
    together.thousandths += flow->thousandths;
  }
  return fans.empty() ? std::nullopt : std::optional(together);
}

std::vector<Measurement> roomAirByFloor(const CheckInput& in) {
  if (in.layout.room.empty() || !isSmallForAir(in.layout.room_area)) return {};
  return roomAir(in, airForFloor(in.layout.room_area));
}

std::vector<Measurement> roomAirByFixtures(const CheckInput& in) {
  if (in.layout.room.empty() || isSmallForAir(in.layout.room_area)) return {};
  const Amount need = airForFixtures(usersOf(in.layout));
  return need == Amount{} ? std::vector<Measurement>{} : roomAir(in, need);
}

std::vector<Measurement> roomAirByVolume(const CheckInput& in) {
  const auto space = airSpaceOf(in.layout);
  if (!space || space->height <= sizeOf(in, 0)) return {};
  return roomAir(in, airForVolume(space->floor, space->height));
}

std::vector<Measurement> fanRunOns(const CheckInput& in) {
  std::vector<Measurement> found;
  const auto space = airSpaceOf(in.layout);
  const auto flow = flowOf(in.layout);
  for (const FanThere& fan : fansOf(in.layout)) {
    if (yesNo(*fan.facts, "continuous") == true) continue;
    Measurement m{.subjects = {fan.id}, .measured = std::nullopt, .places = {fan.place}};
    if (const auto minutes = amountOf(*fan.facts, "run_on")) {
      m.measured = *minutes;
      if (space && flow) {
        const double left = moistureLeft(airChanges(*flow, space->floor, space->height), *minutes);
        m.detail = "moisture-left:" + std::to_string(std::lround(left * 100));
      }
    } else {
      m.fact = "run_on";
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> fanLoudness(const CheckInput& in) {
  constexpr Amount kAlways = Amount::of(1);
  std::vector<Measurement> found;
  for (const FanThere& fan : fansOf(in.layout)) {
    Measurement m{.subjects = {fan.id}, .measured = std::nullopt, .places = {fan.place}};
    const auto loud = amountOf(*fan.facts, "sones");
    const auto always = yesNo(*fan.facts, "continuous");
    const Amount limit = in.rule == nullptr ? Amount{} : std::get<Amount>(in.rule->limit);
    if (!loud) {
      m.fact = "sones";
    } else if (always == true) {
      m.measured = *loud;
      m.limit = std::min(limit, kAlways);
      m.detail = "fan-quiet-always";
    } else if (always == false || *loud <= kAlways || *loud > limit) {
      m.measured = *loud;
    } else {
      m.fact = "continuous";
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> compartmentAir(const CheckInput& in) {
  const Layout& layout = in.layout;
  if (layout.room.empty() || yesNo(layout.option.room.facts, "compartment") != true) return {};
  Measurement m{.subjects = {}, .measured = std::nullopt, .places = {pointAt(centroidOf(layout.room))}};
  ElementId silent;
  bool opens = false;
  for (const PlacedOpening& o : layout.openings) {
    if (o.opening.kind != OpeningKind::window) continue;
    const auto share = amountOf(o.opening.facts, "openable_share");
    if (share && *share > Amount{}) opens = true;
    if (!share && silent.empty()) silent = o.opening.id;
  }
  if (opens || !fansOf(layout).empty() || silent.empty()) {
    m.measured = opens || !fansOf(layout).empty();
  } else {
    m.subjects = {silent};
    m.fact = "openable_share";
  }
  return {m};
}

}  // namespace elbowroom::checks
