#include "core/rules/checks/zone.h"

#include <algorithm>
#include <cstdint>

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

Length Room::lacks() const {
  if (side_lacks <= Length{}) return deep_lacks;
  if (deep_lacks <= Length{}) return side_lacks;
  return std::min(side_lacks, deep_lacks);
}

Room roomFor(const Layout& layout, const Obstacles& obstacles, const Zone& zone) {
  // Lines that would leave the room are cut at its walls, so that a room too small one way is judged that way.
  const auto across = [&](Length deep) { return Segment{zone.at, zone.corner({}, deep)}; };
  const auto along = [&](Length left, Length right) {
    return Segment{zone.corner(std::min(left, zone.to_left), {}),
                   zone.corner(-std::min(right, zone.to_right), {})};
  };
  const Length just = Length::nanometres(1'000'000);
  const Length room_deep =
      aheadOf({zone.corner(just, {}), zone.corner(-just, {})}, zone.out, layout, {}).distance;
  const Segment line = across(std::min(zone.deep, room_deep));
  const Length room_left = aheadOf(line, zone.left, layout, {}).distance;
  const Length room_right = aheadOf(line, zone.left.opposite(), layout, {}).distance;
  Room room{aheadOf(line, zone.left, layout, obstacles),
            aheadOf(line, zone.left.opposite(), layout, obstacles),
            aheadOf(along(room_left, room_right), zone.out, layout, obstacles),
            {},
            {}};
  room.side_lacks =
      missing(zone.to_left, room.left.distance) + missing(zone.to_right, room.right.distance);
  room.deep_lacks = missing(zone.deep, room.deep.distance);
  return room;
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
