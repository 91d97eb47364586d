#include <algorithm>

#include "core/plan/layout_parts.h"
#include "core/plan/wall_line.h"

namespace elbowroom::layout_parts {
namespace {

using namespace literals;

constexpr Length kPocketSpare = 1_in;      // pocket rough opening 2W + 1 in
// Between the wall's face and the pocket: 1/2 in board and 5/8 in split stud.
constexpr Length kPocketFace = Length::nanometres(28'575'000);

// A leaf hinged at that jamb, opening a quarter turn to the swing's side.
Leaf leafAt(const WallFrame& wall, const PlacedOpening& placed, Hand hinge, Length width) {
  const bool in = placed.opening.swing == Swing::in, left = hinge == Hand::left;
  Leaf leaf;
  leaf.hinge = left ? placed.left : placed.right;
  if (!in) leaf.hinge = leaf.hinge - wall.thickness * wall.inward;
  leaf.width = width;
  leaf.closed = left ? wall.along : wall.along.opposite();
  leaf.sweep = left == in ? -90_deg : 90_deg;
  return leaf;
}

// The two panels of a bifold leaf, each W/2 wide, fold up at the hinge jamb. The pivot panel sweeps a quarter
// circle there. The other sweeps up to the astroid x = W cos^3, y = W sin^3 of a sliding ladder, which two
// quarter circles cover whole: W/2 about the opposite jamb and 1.15 W/2 (1.149 needed) about the hinge jamb.
constexpr double kBifoldReach = 1.15;

std::vector<Leaf> leavesOf(const WallFrame& wall, const PlacedOpening& placed) {
  const Length width = placed.opening.width;
  const Hand hinge = placed.opening.hinge, other = hinge == Hand::left ? Hand::right : Hand::left;
  switch (placed.opening.action) {
    case DoorAction::hinged: return {leafAt(wall, placed, hinge, width)};
    case DoorAction::doubleLeaf:
      return {leafAt(wall, placed, Hand::left, width / 2), leafAt(wall, placed, Hand::right, width / 2)};
    case DoorAction::bifold:
      return {leafAt(wall, placed, hinge, (width / 2).scaled(kBifoldReach)),
              leafAt(wall, placed, other, width / 2)};
    default: return {};
  }
}

// Between two places along the wall and two depths, positive into the room; counter-clockwise.
Outline onWall(const WallFrame& wall, Length s0, Length s1, Length low, Length high) {
  return {wall.at(s0) + low * wall.inward, wall.at(s0) + high * wall.inward, wall.at(s1) + high * wall.inward,
          wall.at(s1) + low * wall.inward};
}

}  // namespace

Length leafThickness(const Opening& opening) { return opening.leaf_thickness.value_or(1.375_in); }

Length parkingLength(const Opening& opening) {
  if (opening.kind != OpeningKind::door) return {};
  if (opening.action == DoorAction::pocket) return opening.width + kPocketSpare;
  if (opening.action == DoorAction::surfaceSliding) return opening.width;
  return {};
}

WallBeside wallBeside(const Option& option, const Opening& opening, Hand side) {
  const std::size_t wall = wallIndex(option, opening.wall).value();
  const std::size_t count = option.room.walls.size();
  const Length reach = openingWidth(opening) / 2;
  const Length low = opening.along - reach, high = opening.along + reach;
  const bool left = side == Hand::left;
  WallBeside beside;
  beside.length = left ? low : wallLine(option, wall).length - high;
  beside.limit = option.room.walls[left ? (wall + count - 1) % count : (wall + 1) % count].id;
  for (const Opening& other : option.openings) {
    if (other.id == opening.id || other.wall != opening.wall) continue;
    if ((other.along < opening.along) != left) continue;
    // A pocket lies inside the wall and meets the other opening; a sliding leaf meets the other's leaf too.
    const bool in_wall = opening.action == DoorAction::pocket;
    const Length half = (in_wall ? openingWidth(other) : other.width) / 2;
    const Length free = left ? low - (other.along + half) : (other.along - half) - high;
    if (free < beside.length) beside = {free, other.id, false};
  }
  return beside;
}

Hand parkingSide(const Option& option, const Opening& opening) {
  if (opening.toward) return *opening.toward;
  const Length left = wallBeside(option, opening, Hand::left).length;
  return left > wallBeside(option, opening, Hand::right).length ? Hand::left : Hand::right;
}

PlacedOpening placeOpening(const Option& option, const std::vector<WallFrame>& walls, const Opening& opening) {
  PlacedOpening placed;
  placed.opening = opening;
  const std::optional<std::size_t> index = wallIndex(option, opening.wall);
  if (!index) return placed;
  placed.wall = static_cast<int>(*index);
  const WallFrame& wall = walls[*index];
  const Length half = openingWidth(opening) / 2, s0 = opening.along - half, s1 = opening.along + half;
  placed.left = wall.at(s0);
  placed.right = wall.at(s1);
  placed.in_wall = onWall(wall, s0, s1, -wall.thickness, {});
  if (opening.kind != OpeningKind::door) return placed;
  placed.leaves = leavesOf(wall, placed);
  placed.leaves_inside = !placed.leaves.empty() && opening.swing == Swing::in;
  const Length parking = parkingLength(opening);
  if (parking <= Length{}) return placed;
  const bool left = parkingSide(option, opening) == Hand::left;
  const Length p0 = left ? s0 - parking : s1, p1 = left ? s0 : s1 + parking;
  if (opening.action == DoorAction::pocket) {
    const Length face = std::min(kPocketFace, wall.thickness / 3);
    placed.cavity = onWall(wall, p0, p1, face - wall.thickness, -face);
  } else {
    placed.park = onWall(wall, p0, p1, {}, leafThickness(opening));
  }
  return placed;
}

}  // namespace elbowroom::layout_parts
