#include "core/rules/checks/access_showers.h"

#include <algorithm>

#include "core/rules/check.h"
#include "core/rules/checks/water_side.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

template <typename Wanted, typename Make>
std::vector<Measurement> perShower(const CheckInput& in, Wanted wanted, Make make) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isShower(f) && wanted(f)) found.push_back(make(f));
  return found;
}

auto ofKind(const CheckInput& in, ShowerKind kind) {
  return [&in, kind](const PlacedFixture& f) { return kindOf(in.layout, f) == kind; };
}
bool every(const PlacedFixture&) { return true; }

// A side of the shower through its middle: across, or front to back.
Measurement sideOf(const PlacedFixture& f, bool across) {
  const Length side = across ? f.fixture.width : f.fixture.depth;
  const Direction way = across ? leftOf(f) : f.facing;
  return {.subjects = {f.fixture.id},
          .measured = side,
          .places = {lineFrom(f.center - (side / 2) * way, f.center + (side / 2) * way)}};
}

Length away(Length from, Length side) { return from > side ? from - side : side - from; }

Zone before(const PlacedFixture& f, bool from_left, Length wide, Length deep) {
  const Length half = f.fixture.width / 2;
  return {f.front_center, leftOf(f), f.facing, from_left ? half : wide - half, from_left ? wide - half : half,
          deep};
}

Measurement floorFromControl(const CheckInput& in, const PlacedFixture& f) {
  const std::optional<Hand> control = controlSide(in.layout, f);
  const Obstacles& others = thingsAround(in, f);
  std::optional<std::pair<Zone, Room>> best;
  for (const Hand side : {Hand::left, Hand::right}) {
    if (control && *control != side) continue;
    const Zone zone = before(f, side == Hand::left, std::max(sizeOf(in, 0), f.fixture.width), limitOf(in));
    const Room room = roomFor(in.layout, others, zone);
    if (!best || room.lacks() < best->second.lacks()) best = {zone, room};
  }
  Measurement m = measuredIn(in.layout, best->first, best->second, f.fixture.id);
  if (!control) m.detail = "control-wall-not-stated";
  return m;
}

}  // namespace

std::vector<Measurement> transferSides(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::transfer), [&](const PlacedFixture& f) {
    const Length limit = limitOf(in);
    return sideOf(f, away(limit, f.fixture.width) >= away(limit, f.fixture.depth));
  });
}

std::vector<Measurement> rollInSizes(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::rollIn), [&](const PlacedFixture& f) {
    const bool by_front = wayInto(in.layout, f).side == Side::front;
    const Length deep = by_front ? f.fixture.depth : f.fixture.width;
    const Length wide = by_front ? f.fixture.width : f.fixture.depth;
    const bool length_lacks = sizeOf(in, 0) - wide > limitOf(in) - deep;
    Measurement m = sideOf(f, by_front == length_lacks);
    if (length_lacks) m.limit = sizeOf(in, 0);
    return m;
  });
}

std::vector<Measurement> alternateDepths(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::alternate),
                   [](const PlacedFixture& f) { return sideOf(f, f.fixture.width < f.fixture.depth); });
}
std::vector<Measurement> alternateLengths(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::alternate),
                   [](const PlacedFixture& f) { return sideOf(f, f.fixture.width >= f.fixture.depth); });
}

std::vector<Measurement> showerEntries(const CheckInput& in) {
  return perShower(in, every, [&](const PlacedFixture& f) {
    const WayIn entry = wayInto(in.layout, f);
    const Segment edge = entry.side == Side::left    ? f.left_side
                         : entry.side == Side::right ? f.right_side
                                                     : f.front;
    Measurement m{.subjects = {f.fixture.id},
                  .measured = entry.width,
                  .places = {lineFrom(edge.a, edge.b)}};
    if (kindOf(in.layout, f) == ShowerKind::rollIn) m.limit = sizeOf(in, 0);
    return m;
  });
}

std::vector<Measurement> transferClearances(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::transfer),
                   [&](const PlacedFixture& f) { return floorFromControl(in, f); });
}

std::vector<Measurement> rollInClearances(const CheckInput& in) {
  return perShower(in, ofKind(in, ShowerKind::rollIn), [&](const PlacedFixture& f) {
    const Length half = f.fixture.width / 2;
    const Zone zone{f.front_center, leftOf(f), f.facing, half, half, limitOf(in)};
    const std::optional<Hand> seat = seatSide(f);
    // Not placed: beside the seat, where 608.5.2 wants it, unlike in a transfer shower.
    const std::optional<Hand> control =
        seat && !controlPlaced(in.layout, f) ? seat : controlSide(in.layout, f);
    const auto may_stand = [&](const PlacedFixture& o) {
      if (!isBasin(o) || !o.fixture.knee_space) return false;
      const Hand end = dot(o.center - f.center, leftOf(f)) > Length{} ? Hand::left : Hand::right;
      return control != end && seat != end && (control || seat);
    };
    const Obstacles others =
        obstaclesWhere(in.layout, [&](const PlacedFixture& o) { return &o != &f && !may_stand(o); });
    return measuredIn(in.layout, zone, roomFor(in.layout, others, zone), f.fixture.id);
  });
}

std::vector<Measurement> showerShortSides(const CheckInput& in) {
  return perShower(in, every, [](const PlacedFixture& f) { return sideOf(f, f.fixture.width <= f.fixture.depth); });
}

std::vector<Measurement> soleShowerSides(const CheckInput& in) {
  for (const PlacedFixture& f : in.layout.fixtures)
    if (counts(f) && isBath(f)) return {};
  return showerShortSides(in);
}

std::vector<Measurement> showerFloorsBefore(const CheckInput& in) {
  return perShower(in, every, [&](const PlacedFixture& f) { return floorFromControl(in, f); });
}

}  // namespace elbowroom::checks
