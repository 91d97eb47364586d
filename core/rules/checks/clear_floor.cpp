#include "core/rules/checks/clear_floor.h"

#include <algorithm>
#include <deque>

#include "core/geometry/confinement.h"
#include "core/rules/check.h"
#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {

// Offsets along the front at which a stretch of this width may begin or end with profit: an end of the range,
// or where an obstacle or a corner of the room begins or ends.
std::vector<Length> startsFor(const Layout& layout, const Obstacles& obstacles, Point at, Direction along,
                              Length least, Length most, Length width) {
  std::vector<Length> starts{(least + most) / 2, least, most};
  const auto add = [&](Point p) {
    const Length offset = dot(p - at, along);
    for (const Length start : {offset, offset - width})
      if (start > least && start < most) starts.push_back(start);
  };
  for (const BoxedOutline& ring : obstacles.outlines) {
    if (ring.outline->size() <= 8)
      for (const Point& p : *ring.outline) add(p);
    else
      for (const Point& p : {ring.box.low, ring.box.high}) add(p);
  }
  for (const Point& p : layout.room) add(p);
  return starts;
}

struct Stand {
  Zone zone;
  Room room;
};

// The best place for `width` by `deep` before the line through `at`, which lies within the width.
Stand bestStand(const Layout& layout, const Obstacles& obstacles, Point at, Direction left, Direction out,
                Length width, Length deep) {
  const auto zoneAt = [&](Length right_reach) {
    return Zone{at, left, out, width - right_reach, right_reach, deep};
  };
  const RoomBeside beside = roomBeside(layout, obstacles, zoneAt({}));
  std::optional<Stand> best;
  const Direction right = left.opposite();
  for (const Length start : startsFor(layout, obstacles, at, right, -width, Length{}, width)) {
    const Zone zone = zoneAt(start + width);
    const Room room = roomFor(layout, obstacles, zone, beside);
    if (!best || room.lacks() < best->room.lacks()) best = {zone, room};
    if (best->room.lacks() <= Length{}) break;  // the middle is tried first
  }
  return *best;
}

// 305.7: a space shut in at both sides for longer than `deep_alcove` has to be wider.
void widenInAlcove(const CheckInput& in, const Stand& stand, Length deep_alcove, Length wider,
                   Measurement& m) {
  if (deep_alcove <= Length{} || stand.room.lacks() > Length{}) return;
  const Zone& zone = stand.zone;
  const Length width = zone.to_left + zone.to_right;
  const Point back = zone.corner((zone.to_left - zone.to_right) / 2, {});
  const Confinement shut =
      confinementOf(in.layout.floor_with_knees, {back, zone.out, width, zone.deep}, wider - width);
  if (shut.depth <= deep_alcove + kMetTolerance) return;
  m.measured = shut.width;
  m.limit = wider;
  m.detail = "alcove";
  m.places = {
      {Place::Kind::line, {zone.corner(zone.to_left, zone.deep), zone.corner(-zone.to_right, zone.deep)}}};
}

// What they block where knee and toe space counts.
const Obstacles& blocksAround(const CheckInput& in, const PlacedFixture& f) {
  return in.memo.once("blocks around", {indexOf(in.layout, f)}, [&] {
    return blocksWhere(in.layout, [&](const PlacedFixture& o) { return &o != &f; });
  });
}

// How far under its front the floor counts: knee and toe space, up to `most` if that is given; `without_cabinet` where
// there is none and the cabinet can be taken out.
Length underFront(const PlacedFixture& f, Length without_cabinet, Length most) {
  const Length under = countedUnder(f);
  if (under <= Length{} && yesNo(f.fixture.facts, "cabinet_removable") == true)
    return std::min(without_cabinet, f.fixture.depth);
  return most > Length{} ? std::min(under, most) : under;
}

// The best place before a fixture, the floor under it counted so far.
const Stand& bestStandAt(const CheckInput& in, const PlacedFixture& f, Length width, Length deep, Length under) {
  return in.memo.once("best stand", {indexOf(in.layout, f), width.nm(), deep.nm(), under.nm()}, [&] {
    return bestStand(in.layout, blocksAround(in, f), f.front_center - under * f.facing, leftOf(f), f.facing,
                     width, deep);
  });
}

template <typename Wanted>
std::vector<Measurement> clearFloors(const CheckInput& in, Wanted wanted) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !wanted(f)) continue;
    const Length under = underFront(f, sizeOf(in, 3), sizeOf(in, 4));
    const Stand& stand =
        bestStandAt(in, f, in.rule->sizes.empty() ? limitOf(in) : sizeOf(in, 0), limitOf(in), under);
    Measurement m = measuredIn(in.layout, stand.zone, stand.room, f.fixture.id);
    if (under > Length{}) m.detail = countedUnder(f) > Length{} ? "knee-space-counted" : "cabinet-taken-out";
    widenInAlcove(in, stand, sizeOf(in, 1), sizeOf(in, 2), m);
    found.push_back(std::move(m));
  }
  return found;
}

// How far straight ahead of the strip the sweep of a door that swings in begins; `far` when it does not.
Length aheadToDoors(const Layout& layout, Segment front, Direction ahead, Length far) {
  const auto meets = [&](Length deep) {
    const Outline strip{front.a, front.b, front.b + deep * ahead, front.a + deep * ahead};
    for (const PlacedOpening& o : layout.openings)
      if (o.leaves_inside)
        for (const Leaf& leaf : o.leaves)
          if (gapToSector(leaf, strip).overlap) return true;
    return false;
  };
  if (!meets(far)) return far;
  Length free, blocked = far;
  while (blocked - free > kContact / 4) {
    const Length middle = (free + blocked) / 2;
    (meets(middle) ? blocked : free) = middle;
  }
  return free;
}

}  // namespace

std::vector<Measurement> basinClearFloors(const CheckInput& in) { return clearFloors(in, isBasin); }
std::vector<Measurement> toiletClearFloors(const CheckInput& in) {
  return clearFloors(in, [](const PlacedFixture& f) { return f.fixture.kind == FixtureKind::toilet; });
}
std::vector<Measurement> bathClearFloors(const CheckInput& in) { return clearFloors(in, isBath); }

std::vector<Measurement> basinAlongside(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || !isBasin(f)) continue;
    const Obstacles& others = thingsAround(in, f);
    const Length half = sizeOf(in, 0) / 2;
    Stand beside{{f.front_center, leftOf(f), f.facing, half, half, limitOf(in)}, {}};
    beside.room = roomFor(in.layout, others, beside.zone);
    Measurement m = measuredIn(in.layout, beside.zone, beside.room, f.fixture.id);
    widenInAlcove(in, beside, sizeOf(in, 3), sizeOf(in, 4), m);
    const Length under = countedUnder(f);
    if (beside.room.lacks() > Length{} && under > Length{} && in.rule->sizes.size() > 2) {
      const Stand& ahead = bestStandAt(in, f, sizeOf(in, 1), sizeOf(in, 2), countedUnder(f));
      if (ahead.room.lacks() < beside.room.lacks()) {
        m = measuredIn(in.layout, ahead.zone, ahead.room, f.fixture.id);
        m.detail = "basin-head-on";
      }
    }
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> toiletFrontStrips(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  for (const PlacedFixture& f : in.layout.fixtures) {
    if (!counts(f) || f.fixture.kind != FixtureKind::toilet) continue;
    Obstacles others = thingsAround(in, f);
    std::deque<Outline> cut;
    for (std::size_t k = 0; k < others.outlines.size() && sizeOf(in, 3) > Length{}; ++k) {
      const PlacedFixture& o = in.layout.fixtures[static_cast<std::size_t>(others.fixture[k])];
      if (!isBasin(o)) continue;
      cut.push_back(behindFront(o, o.wall == f.wall ? sizeOf(in, 4) : sizeOf(in, 3)));
      others.outlines[k] = cut.back();
    }
    std::optional<std::pair<Zone, Room>> best;
    for (const auto& [left, right] : {std::pair{0, 1}, {1, 0}}) {
      const Zone zone{
          f.front_center, leftOf(f), f.facing, sizeOf(in, std::size_t(left)), sizeOf(in, std::size_t(right)),
          limitOf(in)};
      Room room = roomFor(in.layout, others, zone);
      if (sizeOf(in, 2) > Length{} && room.deep.distance > Length{}) {
        const Segment front{zone.corner(zone.to_left, {}), zone.corner(-zone.to_right, {})};
        room.deep.distance = aheadToDoors(in.layout, front, zone.out, room.deep.distance);
        room.deep_lacks = std::max(Length{}, zone.deep - room.deep.distance);
        if (room.deep_lacks < kMetTolerance) room.deep_lacks = {};
      }
      if (!best || room.lacks() < best->second.lacks()) best = {zone, room};
    }
    found.push_back(measuredIn(in.layout, best->first, best->second, f.fixture.id));
  }
  return found;
}

}  // namespace elbowroom::checks
