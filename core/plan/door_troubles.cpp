#include <algorithm>

#include "core/plan/layout_parts.h"

namespace elbowroom {
namespace {

using layout_parts::WallBeside;

// The nearest solid fixture standing in the strip where the leaf parks, as missing wall.
void addFixtureInPark(const Layout& layout, const PlacedOpening& placed, bool left, std::vector<Trouble>& found) {
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
  const Point jamb = left ? placed.left : placed.right;
  const Direction away = left ? wall.along.opposite() : wall.along;
  const Length needed = layout_parts::parkingLength(placed.opening);
  std::optional<Trouble> worst;
  for (std::size_t i = 0; i < layout.solid.size(); ++i) {
    const Outline& outline = layout.solid_outlines[i];
    if (!gapBetween(placed.park, outline).overlap) continue;
    // Only the part of the outline as near to the wall as the leaf takes its wall away.
    Length nearest = needed;
    const Length reach = layout_parts::leafThickness(placed.opening);
    for (std::size_t k = 0; k < outline.size(); ++k) {
      const Point a = outline[k], b = outline[(k + 1) % outline.size()];
      const Length ya = dot(a - jamb, wall.inward), yb = dot(b - jamb, wall.inward);
      const Length xa = dot(a - jamb, away), xb = dot(b - jamb, away);
      if (ya < reach) nearest = std::min(nearest, std::max(xa, Length{}));
      if ((ya < reach) != (yb < reach))
        nearest = std::min(nearest, std::max(xa + (xb - xa).scaled((reach - ya) / (yb - ya)), Length{}));
    }
    const Length missing = needed - nearest;
    if (missing <= kContact || (worst && missing <= worst->short_by)) continue;
    const auto& fixture = layout.fixtures[static_cast<std::size_t>(layout.solid[i])].fixture;
    worst = Trouble{DoorTrouble::slideMeetsFixture, fixture.id, missing, jamb + nearest * away};
  }
  if (worst) found.push_back(*worst);
}

}  // namespace

std::vector<Trouble> doorTroubles(const Layout& layout, const PlacedOpening& placed) {
  std::vector<Trouble> found;
  const Length needed = layout_parts::parkingLength(placed.opening);
  if (placed.wall < 0 || needed <= Length{}) return found;
  const WallFrame& wall = layout.walls[static_cast<std::size_t>(placed.wall)];
  const bool pocket = placed.opening.action == DoorAction::pocket;
  const Hand side = layout_parts::parkingSide(layout.option, placed.opening);
  const bool left = side == Hand::left;
  const WallBeside beside = layout_parts::wallBeside(layout.option, placed.opening, side);
  if (needed - beside.length > kContact) {
    const Point jamb = left ? placed.left : placed.right;
    const Point limit = jamb + std::max(beside.length, Length{}) * (left ? wall.along.opposite() : wall.along);
    const DoorTrouble kind = pocket ? (beside.corner ? DoorTrouble::pocketMeetsCorner : DoorTrouble::pocketMeetsOpening)
                                    : (beside.corner ? DoorTrouble::noWallToSlideOn : DoorTrouble::slideMeetsOpening);
    found.push_back({kind, beside.limit, needed - beside.length, limit});
  }
  if (pocket && wall.plumbing)
    found.push_back({DoorTrouble::pocketMeetsPipes, wall.id, {}, centroidOf(placed.cavity)});
  if (!pocket) addFixtureInPark(layout, placed, left, found);
  return found;
}

}  // namespace elbowroom
