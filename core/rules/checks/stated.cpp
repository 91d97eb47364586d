#include "core/rules/checks/stated.h"

#include <algorithm>

#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

// One measurement per fixture that `wanted` accepts; `read` gives the figure, nullopt when it is not stated.
template <typename Wanted, typename Read>
std::vector<Measurement> ofFixtures(const CheckInput& in, const char* fact, Wanted wanted, Read read) {
  std::vector<Measurement> found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !wanted(f)) continue;
    Measurement m{.subjects = {f.fixture.id}, .places = {lineFrom(f.front.a, f.front.b)}};
    if (const auto figure = read(f))
      m.measured = *figure;
    else
      m.fact = fact;
    found.push_back(std::move(m));
  }
  return found;
}

template <typename Wanted, typename Read>
std::vector<Measurement> ofDoors(const CheckInput& in, const char* fact, Wanted wanted, Read read) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door || !wanted(o)) continue;
    Measurement m{.subjects = {o.opening.id}, .places = {lineFrom(o.left, o.right)}};
    if (const auto figure = read(o))
      m.measured = *figure;
    else
      m.fact = fact;
    found.push_back(std::move(m));
  }
  return found;
}

bool isToiletOnly(const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; }
bool hasKnees(const PlacedFixture& f) { return isBasin(f) && f.fixture.knee_space.has_value(); }
bool everyDoor(const PlacedOpening&) { return true; }
bool hasLeaf(const PlacedOpening& o) { return o.opening.action != DoorAction::cased; }

std::vector<Measurement> ofShowerSeats(const CheckInput& in, const char* fact) {
  const auto seated = [](const PlacedFixture& f) {
    return isShower(f) && (lengthOf(f.fixture.facts, "seat_depth") || yesNo(f.fixture.facts, "fold_down_seat") ||
                           wordOf(f.fixture.facts, "seat_side"));
  };
  return ofFixtures(in, fact, seated, [&](const PlacedFixture& f) { return lengthOf(f.fixture.facts, fact); });
}

}  // namespace

std::vector<Measurement> basinHeights(const CheckInput& in) {
  return ofFixtures(in, "height", isBasin, [](const PlacedFixture& f) { return f.fixture.height; });
}

std::vector<Measurement> toiletSeatHeights(const CheckInput& in) {
  return ofFixtures(in, "seat_height", isToiletOnly,
                    [](const PlacedFixture& f) { return lengthOf(f.fixture.facts, "seat_height"); });
}

std::vector<Measurement> showerSeatHeights(const CheckInput& in) { return ofShowerSeats(in, "seat_height"); }
std::vector<Measurement> showerSeatsFromEntry(const CheckInput& in) { return ofShowerSeats(in, "seat_from_entry"); }
std::vector<Measurement> showerSeatsFromWall(const CheckInput& in) { return ofShowerSeats(in, "seat_from_wall"); }

std::vector<Measurement> floorFalls(const CheckInput& in) {
  if (in.layout.room.empty()) return {};
  Measurement m{.subjects = {}, .places = {pointAt(centroidOf(in.layout.room))}};
  if (const auto fall = amountOf(in.layout.option.room.facts, "floor_fall"))
    m.measured = *fall;
  else
    m.fact = "floor_fall";
  return {m};
}

std::vector<Measurement> basinProjections(const CheckInput& in) {
  return ofFixtures(in, "", isBasin, [](const PlacedFixture& f) {
    const auto* on = std::get_if<OnWall>(&f.fixture.placement);
    return std::optional(f.fixture.depth + (on == nullptr ? Length{} : on->gap));
  });
}

std::vector<Measurement> kneeHeights(const CheckInput& in) {
  return ofFixtures(in, "knee_space", isBasin, [](const PlacedFixture& f) {
    return f.fixture.knee_space ? std::optional(f.fixture.knee_space->height) : std::nullopt;
  });
}

std::vector<Measurement> kneeDepths(const CheckInput& in) {
  return ofFixtures(in, "knee_space", hasKnees,
                    [](const PlacedFixture& f) { return std::optional(f.fixture.knee_space->depth); });
}

std::vector<Measurement> toeDepths(const CheckInput& in) {
  using namespace literals;
  return ofFixtures(in, "knee_space", hasKnees, [](const PlacedFixture& f) {
    const KneeSpace& knees = *f.fixture.knee_space;
    return std::optional(std::min(knees.toe.value_or(knees.depth + 6_in), f.fixture.depth));
  });
}

std::vector<Measurement> pipesCovered(const CheckInput& in) {
  return ofFixtures(in, "pipes_covered", hasKnees,
                    [](const PlacedFixture& f) { return yesNo(f.fixture.facts, "pipes_covered"); });
}

std::vector<Measurement> flushOnOpenSide(const CheckInput& in) {
  return ofFixtures(in, "flush_side", isToiletOnly, [&](const PlacedFixture& f) -> std::optional<bool> {
    const auto side = wordOf(f.fixture.facts, "flush_side");
    if (!side) return std::nullopt;
    const auto& [left, right] = sideWalls(in, f);
    return *side == "top" || (*side == "left") == (left.distance > right.distance);
  });
}

std::vector<Measurement> showerCurbs(const CheckInput& in) {
  return ofFixtures(in, "curb", isShower, [](const PlacedFixture& f) { return f.fixture.curb; });
}

std::vector<Measurement> showerWaterLimits(const CheckInput& in) {
  return ofFixtures(in, "valve_limit", isShower,
                    [](const PlacedFixture& f) { return amountOf(f.fixture.facts, "valve_limit"); });
}

std::vector<Measurement> doorThresholds(const CheckInput& in) {
  return ofDoors(in, "threshold", everyDoor,
                 [](const PlacedOpening& o) { return lengthOf(o.opening.facts, "threshold"); });
}

std::vector<Measurement> doorHandles(const CheckInput& in) {
  return ofDoors(in, "handle_height", hasLeaf,
                 [](const PlacedOpening& o) { return lengthOf(o.opening.facts, "handle_height"); });
}

std::vector<Measurement> doorHeights(const CheckInput& in) {
  return ofDoors(in, "height", everyDoor, [](const PlacedOpening& o) { return std::optional(o.opening.height); });
}

std::vector<Measurement> doorsSwingOut(const CheckInput& in) {
  return ofDoors(in, "", [](const PlacedOpening& o) { return !o.leaves.empty(); },
                 [](const PlacedOpening& o) { return std::optional(!o.leaves_inside); });
}

std::vector<Measurement> smokeAlarmsFromDoors(const CheckInput& in) {
  const bool steams =
      std::any_of(in.layout.fixtures.begin(), in.layout.fixtures.end(),
                  [](const PlacedFixture& f) { return counts(f) && (isBath(f) || isShower(f)); });
  return ofDoors(
      in, "smoke_alarm_from", [&](const PlacedOpening&) { return steams; },
      [](const PlacedOpening& o) { return lengthOf(o.opening.facts, "smoke_alarm_from"); });
}

std::vector<Measurement> hotOnTheLeft(const CheckInput& in) {
  const auto has_tap = [](const PlacedFixture& f) {
    return f.fixture.kind == FixtureKind::bidet || isBasin(f) || isBath(f) || isShower(f);
  };
  return ofFixtures(in, "hot_left", has_tap,
                    [](const PlacedFixture& f) { return yesNo(f.fixture.facts, "hot_left"); });
}

std::vector<Measurement> doorsUnlock(const CheckInput& in) {
  return ofDoors(in, "unlocks_from_outside", hasLeaf,
                 [](const PlacedOpening& o) { return yesNo(o.opening.facts, "unlocks_from_outside"); });
}

}  // namespace elbowroom::checks
