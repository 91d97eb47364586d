#include "core/rules/checks/manoeuvring.h"

#include "core/rules/checks/zone.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// Beyond the opening toward its latch (or stop) and its hinge (or pocket), and from the wall.
struct Asked {
  Length latch, hinge, deep;
  const char* detail = "";
};

struct Table {
  Asked front;
  Asked along[3];  // approaches along the wall; deep 0: none
};

Table hinged(const Opening& door, Length push_front) {
  const bool closer = door.closer == true, both = closer && door.latch == true;
  if (door.swing == Swing::in)
    return {{18_in, {}, 60_in},
            {{24_in, {}, closer ? 54_in : 48_in, "door-from-latch-side"},
             {36_in, {}, 60_in, "door-from-hinge-side"},
             {42_in, {}, 54_in, "door-from-hinge-side"}}};
  return {{both ? 12_in : Length{}, {}, push_front},
          {{24_in, {}, closer ? 48_in : 42_in, "door-from-latch-side"},
           {{}, 22_in, both ? 48_in : 42_in, "door-from-hinge-side"},
           {}}};
}

Table sliding(const Opening& door, Length push_front) {
  if (door.action == DoorAction::cased) return {{{}, {}, push_front}, {{{}, {}, 42_in, "door-along-wall"}, {}, {}}};
  return {{{}, {}, push_front},
          {{24_in, {}, 42_in, "door-from-latch-side"}, {{}, 22_in, 42_in, "door-from-hinge-side"}, {}}};
}

bool swings(const Opening& door) {
  return door.action == DoorAction::hinged || door.action == DoorAction::doubleLeaf;
}

// The side the hinge is on, or the pocket, or the folded leaves.
bool hingeAtLeft(const Layout& layout, const PlacedOpening& o) {
  const Opening& door = o.opening;
  if (door.action == DoorAction::pocket || door.action == DoorAction::surfaceSliding) {
    if (door.toward) return *door.toward == Hand::left;
    const Outline& parked = o.cavity.empty() ? o.park : o.cavity;
    if (parked.empty()) return false;
    const WallFrame& wall = layout.walls[static_cast<std::size_t>(o.wall)];
    return dot(centroidOf(parked) - midpoint(o.left, o.right), wall.along) < Length{};
  }
  return door.hinge == Hand::left;
}

struct Doorway {
  const Layout& layout;
  const PlacedOpening& opening;
  Direction left, out;
  bool hinge_left;

  Zone zone(const Asked& asked) const {
    const Length half = distance(opening.left, opening.right) / 2;
    const Length hinge = half + asked.hinge, latch = half + asked.latch;
    return {midpoint(opening.left, opening.right), left,       out, hinge_left ? hinge : latch,
            hinge_left ? latch : hinge,            asked.deep,
            (hinge_left ? asked.hinge : asked.latch) > Length{},
            (hinge_left ? asked.latch : asked.hinge) > Length{}};
  }
  // Comes from that side along the wall: a wheelchair's length of a route's width beyond the jamb.
  bool reachedAlong(bool from_latch, const Obstacles& obstacles) const {
    const Length half = distance(opening.left, opening.right) / 2;
    const bool from_left = from_latch != hinge_left;
    Zone run{midpoint(opening.left, opening.right), left, out, {}, {}, 36_in};
    (from_left ? run.to_left : run.to_right) = half + 48_in;
    return roomFor(layout, obstacles, run).lacks() <= Length{};
  }
};

}  // namespace

std::vector<Measurement> doorManoeuvring(const CheckInput& in) {
  std::vector<Measurement> found;
  if (in.layout.room.empty()) return found;
  const Obstacles all = obstaclesWhere(in.layout, [](const PlacedFixture&) { return true; });
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door || o.wall < 0) continue;
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(o.wall)];
    const Doorway way{in.layout, o, wall.along.opposite(), wall.inward, hingeAtLeft(in.layout, o)};
    const Table table =
        swings(o.opening) ? hinged(o.opening, sizeOf(in, 0)) : sliding(o.opening, sizeOf(in, 0));
    Zone zone = way.zone(table.front);
    Room room = roomFor(in.layout, all, zone);
    const char* detail = "door-from-front";
    for (const Asked& asked : table.along) {
      if (room.lacks() <= Length{}) break;
      if (asked.deep <= Length{}) continue;
      // The pull from the hinge side is a table row with its space beyond the latch.
      const bool from_latch = std::string_view(asked.detail) == "door-from-latch-side";
      const bool either = std::string_view(asked.detail) == "door-along-wall";
      if (!way.reachedAlong(from_latch, all) && !(either && way.reachedAlong(true, all))) continue;
      const Zone other = way.zone(asked);
      const Room there = roomFor(in.layout, all, other);
      if (there.lacks() >= room.lacks()) continue;
      zone = other;
      room = there;
      detail = asked.detail;
    }
    Measurement m = measuredIn(in.layout, zone, room, o.opening.id);
    m.detail = detail;
    found.push_back(std::move(m));
  }
  return found;
}

std::vector<Measurement> doorNibs(const CheckInput& in) {
  std::vector<Measurement> found;
  for (const PlacedOpening& o : in.layout.openings) {
    if (o.opening.kind != OpeningKind::door || o.wall < 0 || o.opening.action != DoorAction::hinged ||
        o.opening.swing != Swing::in)
      continue;
    const WallFrame& wall = in.layout.walls[static_cast<std::size_t>(o.wall)];
    const bool latch_left = o.opening.hinge == Hand::right;
    const Point jamb = latch_left ? o.left : o.right;
    const Length beside = distance(jamb, latch_left ? wall.from : wall.to);
    found.push_back({.subjects = {o.opening.id, wall.id},
                     .measured = beside,
                     .places = {lineFrom(jamb, latch_left ? wall.from : wall.to)}});
  }
  return found;
}

}  // namespace elbowroom::checks
