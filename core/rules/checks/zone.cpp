#include "core/rules/checks/zone.h"

#include <algorithm>
#include <cstdint>
#include <utility>

#include "core/rules/check.h"

namespace elbowroom::checks {

namespace {

Length missing(Length wanted, Length there) {
  const Length lacks = wanted - there;
  return lacks < kMetTolerance ? Length{} : lacks;
}

}  // namespace

Outline Zone::outline() const {
  return {corner(to_left, {}), corner(-to_right, {}), corner(-to_right, deep), corner(to_left, deep)};
}

Zone cornerZone(const CheckInput& in, const PlacedFixture& f, Length wide, Length deep) {
  const auto& [left, right] = sideWalls(in, f);
  const Length near = std::min({left.distance, right.distance, wide});
  Zone zone{f.back_center, leftOf(f), f.facing, near, wide - near, deep};
  if (right.distance < left.distance) std::swap(zone.to_left, zone.to_right);
  return zone;
}

Length Room::lacks() const {
  if (side_lacks <= Length{}) return deep_lacks;
  if (deep_lacks <= Length{}) return side_lacks;
  return std::min(side_lacks, deep_lacks);
}

RoomBeside roomBeside(const Layout& layout, const Obstacles& obstacles, const Zone& zone) {
  // Lines that would leave the room are cut at its walls, so that a room too small one way is judged that
  // way.
  const Length just = Length::nanometres(1'000'000);
  const Length room_deep =
      aheadOf({zone.corner(just, {}), zone.corner(-just, {})}, zone.out, layout, {}).distance;
  const Segment line{zone.at, zone.corner({}, std::min(zone.deep, room_deep))};
  return {aheadOfBoth(line, zone.left, layout, obstacles),
          aheadOfBoth(line, zone.left.opposite(), layout, obstacles)};
}

Room roomFor(const Layout& layout, const Obstacles& obstacles, const Zone& zone, const RoomBeside& beside) {
  const Segment along{zone.corner(std::min(beside.left.room.distance, zone.to_left), {}),
                      zone.corner(-std::min(beside.right.room.distance, zone.to_right), {})};
  Room room{beside.left.all, beside.right.all, aheadOf(along, zone.out, layout, obstacles), {}, {}};
  room.side_lacks =
      missing(zone.to_left, room.left.distance) + missing(zone.to_right, room.right.distance);
  room.deep_lacks = missing(zone.deep, room.deep.distance);
  return room;
}

Room roomFor(const Layout& layout, const Obstacles& obstacles, const Zone& zone) {
  return roomFor(layout, obstacles, zone, roomBeside(layout, obstacles, zone));
}

Measurement measuredIn(const Layout& layout, const Zone& zone, const Room& room, const ElementId& subject) {
  const Length left_spare = room.left.distance - zone.to_left, right_spare = room.right.distance - zone.to_right;
  const Length deep_spare = room.deep.distance - zone.deep;
  const bool fits = room.lacks() <= Length{};
  const bool close_left = zone.spare_left && left_spare < deep_spare;
  const bool close_right = zone.spare_right && right_spare < deep_spare;
  const bool by_side = fits ? close_left || close_right
                            : room.side_lacks > Length{} &&
                                  (room.deep_lacks <= Length{} || room.side_lacks < room.deep_lacks);
  if (by_side) {
    const bool left = fits && close_left != close_right ? close_left : left_spare <= right_spare;
    const Ahead& near = left ? room.left : room.right;
    const Direction way = left ? zone.left : zone.left.opposite();
    const Length wanted = zone.to_left + zone.to_right;
    const Length here = fits ? wanted + (left ? left_spare : right_spare) : wanted - room.side_lacks;
    Measurement m{.subjects = {subject, idOf(layout, near)},
                  .measured = here,
                  .places = {lineFrom(near.at - here * way, near.at)},
                  .limit = wanted};
    if (!fits) {
      const Length from = near.distance, to = left ? zone.to_left : zone.to_right;
      const Segment side{zone.at, zone.corner({}, zone.deep)};
      m.places.push_back(stripBetween(side, way, std::min(from, to), to));
    }
    return m;
  }
  Measurement m{.subjects = {subject, idOf(layout, room.deep)},
                .measured = room.deep.distance,
                .places = {lineFrom(room.deep.at - room.deep.distance * zone.out, room.deep.at)},
                .limit = zone.deep};
  if (!fits)
    m.places.push_back(stripBetween({zone.corner(zone.to_left, {}), zone.corner(-zone.to_right, {})}, zone.out,
                                    std::min(room.deep.distance, zone.deep), zone.deep));
  return m;
}

Length countedUnder(const PlacedFixture& f) {
  if (f.floor_block.empty()) return f.fixture.depth;
  Length reaches = Length::nanometres(INT64_MIN);
  for (const Point& p : f.floor_block) reaches = std::max(reaches, dot(p - f.back_center, f.facing));
  return std::max(Length{}, f.fixture.depth - reaches);
}

Outline behindFront(const PlacedFixture& f, Length strip) {
  const Length most = f.fixture.depth - strip;
  const auto reach = [&](Point p) { return dot(p - f.back_center, f.facing); };
  Outline kept;
  for (std::size_t i = 0; i < f.footprint.size(); ++i) {
    const Point a = f.footprint[i], b = f.footprint[(i + 1) % f.footprint.size()];
    const Length ra = reach(a), rb = reach(b);
    if (ra <= most) kept.push_back(a);
    if ((ra < most && rb > most) || (ra > most && rb < most)) {
      const double share = static_cast<double>((most - ra).nm()) / static_cast<double>((rb - ra).nm());
      kept.push_back({a.x + (b.x - a.x).scaled(share), a.y + (b.y - a.y).scaled(share)});
    }
  }
  return kept;
}

Length sizeOf(const CheckInput& in, std::size_t index) {
  return in.rule != nullptr && index < in.rule->sizes.size() ? in.rule->sizes[index] : Length{};
}

}  // namespace elbowroom::checks
