#include "core/rules/checks/bath_space.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/water_side.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

template <typename Make>
std::vector<Measurement> perBath(const CheckInput& in, Make make) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isBath(f)) found.push_back(make(f));
  return found;
}

// Along the front from the left end of the bath, as seen facing the wall.
Zone before(const PlacedFixture& bath, Length from_left, Length from_right, Length deep) {
  const Length half = bath.fixture.width / 2;
  return {bath.front_center, leftOf(bath), bath.facing, half - from_left, half - from_right, deep};
}

bool standsBefore(const PlacedFixture& o, const Zone& zone) {
  return gapBetween(o.footprint, zone.outline()).overlap;
}

Measurement noControl(const PlacedFixture& bath) {
  return {.subjects = {bath.fixture.id},
          .places = {lineFrom(bath.front.a, bath.front.b)},
          .detail = "control-end-not-stated",
          .fact = "control"};
}

Measurement whole(const CheckInput& in, const PlacedFixture& bath) {
  const Layout& layout = in.layout;
  const std::optional<Hand> control = controlSide(layout, bath);
  Zone zone = before(bath, {}, {}, limitOf(in));
  if (yesNo(bath.fixture.facts, "head_seat") == true) {
    if (!control) return noControl(bath);
    (*control == Hand::left ? zone.to_right : zone.to_left) += sizeOf(in, 0);
  }
  const auto is_lavatory = [&](const PlacedFixture& o) {
    return isBasin(o) && o.fixture.knee_space && standsBefore(o, zone);
  };
  const auto at_control = [&](const PlacedFixture& o) {
    const Length left_of_middle = dot(o.center - bath.center, leftOf(bath));
    return control && is_lavatory(o) && (*control == Hand::left) == (left_of_middle > Length{});
  };
  const auto taken_out = [&](const PlacedFixture& o) {
    return sizeOf(in, 1) > Length{} && yesNo(o.fixture.facts, "cabinet_removable") == true && standsBefore(o, zone);
  };
  const Obstacles all = obstaclesWhere(
      layout, [&](const PlacedFixture& o) { return &o != &bath && !at_control(o) && !taken_out(o); });
  const Room room = roomFor(layout, all, zone);
  if (!control && room.lacks() > Length{}) {
    const Obstacles but_basins =
        obstaclesWhere(layout, [&](const PlacedFixture& o) { return &o != &bath && !is_lavatory(o); });
    if (roomFor(layout, but_basins, zone).lacks() <= Length{}) return noControl(bath);
  }
  return measuredIn(layout, zone, room, bath.fixture.id);
}

Measurement stretch(const CheckInput& in, const PlacedFixture& bath) {
  const std::optional<Hand> control = controlSide(in.layout, bath);
  if (!control) return noControl(bath);
  const bool from_left = *control == Hand::left;
  const Length rest = std::max(Length{}, bath.fixture.width - sizeOf(in, 0));
  const Zone zone = before(bath, from_left ? Length{} : rest, from_left ? rest : Length{}, limitOf(in));
  const Obstacles& others = thingsAround(in, bath);
  return measuredIn(in.layout, zone, roomFor(in.layout, others, zone), bath.fixture.id);
}

// The best stretch begins at an end of the bath or where something that stands before it ends.
Measurement anyStretch(const CheckInput& in, const PlacedFixture& bath) {
  const Length rest = std::max(Length{}, bath.fixture.width - sizeOf(in, 0));
  const Obstacles& others = thingsAround(in, bath);
  std::vector<Length> starts{Length{}, rest};
  const auto add = [&](const Outline& ring) {
    for (const Point& p : ring) {
      const Length from_left = bath.fixture.width / 2 - dot(p - bath.center, leftOf(bath));
      for (const Length start : {from_left, from_left - sizeOf(in, 0)})
        if (start > Length{} && start < rest) starts.push_back(start);
    }
  };
  for (const BoxedOutline& ring : others.outlines) add(*ring.outline);
  add(in.layout.room);
  const RoomBeside beside = roomBeside(in.layout, others, before(bath, {}, rest, limitOf(in)));
  std::optional<std::pair<Zone, Room>> best;
  for (const Length start : starts) {
    const Zone zone = before(bath, start, rest - start, limitOf(in));
    const Room room = roomFor(in.layout, others, zone, beside);
    if (!best || room.lacks() < best->second.lacks()) best = {zone, room};
  }
  return measuredIn(in.layout, best->first, best->second, bath.fixture.id);
}

Measurement eitherWay(const CheckInput& in, const PlacedFixture& bath) {
  const Length rest = std::max(Length{}, bath.fixture.width - sizeOf(in, 1));
  std::optional<std::pair<Zone, Room>> best;
  std::string detail;
  for (const bool head_on : {false, true}) {
    const Length deep = head_on ? sizeOf(in, 0) : limitOf(in);
    // The stretch that must stay clear lies at one end or the other.
    for (const bool left : {true, false}) {
      const Zone clear = before(bath, left ? Length{} : rest, left ? rest : Length{}, deep);
      const auto may_stand = [&](const PlacedFixture& o) {
        return (isBasin(o) || (head_on && o.fixture.kind == FixtureKind::toilet)) && !standsBefore(o, clear);
      };
      const Zone all = before(bath, {}, {}, deep);
      const Room room = roomFor(in.layout, obstaclesWhere(in.layout,
                                                          [&](const PlacedFixture& o) {
                                                            return &o != &bath && !may_stand(o);
                                                          }),
                                all);
      if (best && room.lacks() >= best->second.lacks()) continue;
      best = {all, room};
      detail = head_on ? "bath-head-on" : "";
    }
  }
  Measurement m = measuredIn(in.layout, best->first, best->second, bath.fixture.id);
  m.detail = detail;
  return m;
}

}  // namespace

std::vector<Measurement> bathClearances(const CheckInput& in) {
  return perBath(in, [&](const PlacedFixture& f) { return whole(in, f); });
}
std::vector<Measurement> bathStretches(const CheckInput& in) {
  return perBath(in, [&](const PlacedFixture& f) { return stretch(in, f); });
}
std::vector<Measurement> bathAnyStretches(const CheckInput& in) {
  return perBath(in, [&](const PlacedFixture& f) { return anyStretch(in, f); });
}
std::vector<Measurement> bathEitherWay(const CheckInput& in) {
  return perBath(in, [&](const PlacedFixture& f) { return eitherWay(in, f); });
}

}  // namespace elbowroom::checks
