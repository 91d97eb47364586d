// Geometry of the clear opening. The frame: x along the wall from the pin, y towards the side the leaf opens
// to. g gap round the leaf, p pin's offset before its face, t leaf, s stop. With g 1/8 and p 1/4 a 90 degree
// leaf leaves W + 2g - (g/2 + p + t) - s: W - 1.875 in for a 1 3/8 in leaf and a 7/16 in stop. Swing-clear hinges take
// the leaf out of the opening at 90 degrees: what is left is stop to stop, W + 2g - 2s (1 1/4 in more; read second
// hand: 1 1/2 to 2 in more).
#include <algorithm>
#include <cmath>

#include "core/plan/layout_parts.h"
#include "core/plan/rough_opening.h"

namespace elbowroom {
namespace {

using namespace literals;

constexpr Length kGap = Length::nanometres(3'175'000);        // 1/8 in
constexpr Length kPinOffset = Length::nanometres(6'350'000);  // 1/4 in
constexpr Length kUsualStop = Length::nanometres(11'112'500);  // 7/16 in
constexpr Length kPocketProud = Length::nanometres(12'700'000);  // 1/2 in, from memory

constexpr double kSquare = 1.5707;  // a hair less than 90 degrees

Length orNothing(Length value) { return std::max(value, Length{}); }

// Shortest way from the latch-side stop to the face of the leaf that shows in the doorway. Its foot never
// passes the leaf's tip, so the face may be taken as a line.
Length hingedClear(const Opening& door, double angle) {
  const Length behind = kPinOffset + layout_parts::leafThickness(door);
  const Length own = door.stop.value_or(kUsualStop);
  const Length stop = door.width + 2 * kGap - kGap / 2 - own;
  const Length square = stop - behind;
  if (angle >= kSquare && yesNo(door.facts, "clear_hinges") == true)
    return orNothing(door.width + 2 * kGap - 2 * own);
  const Length turned = stop.scaled(std::sin(angle)) + behind.scaled(std::cos(angle)) - behind;
  return orNothing(std::min(square, turned));
}

// Two leaves meeting without a post: twice the way from the middle to a leaf's tip.
Length doubleClear(const Opening& door, double angle) {
  const Length behind = kPinOffset + layout_parts::leafThickness(door), leaf = door.width / 2;
  const Length middle = leaf + kGap;
  const Length tip = (leaf + kGap / 2).scaled(std::cos(angle)) + behind.scaled(std::sin(angle));
  return orNothing(2 * (middle - tip));
}

}  // namespace

Length openingWidth(const Opening& opening) {
  const bool slides = opening.kind == OpeningKind::door && opening.action == DoorAction::surfaceSliding;
  return slides ? orNothing(opening.width - 2 * kUsualOverlap) : opening.width;
}

Length clearOpening(const PlacedOpening& placed, Angle opens) {
  const Opening& door = placed.opening;
  if (door.kind == OpeningKind::window) return door.width;
  const double angle = std::min(opens, 90_deg).radians();
  switch (door.action) {
    case DoorAction::hinged: return hingedClear(door, angle);
    case DoorAction::doubleLeaf: return doubleClear(door, angle);
    case DoorAction::pocket: return orNothing(door.width - kPocketProud);
    case DoorAction::surfaceSliding:
    case DoorAction::cased: return openingWidth(door);
    case DoorAction::bifold:
      // The guided end stands at W cos(angle) from the hinge jamb; folded, the two panels lie side by side.
      return orNothing(door.width - door.width.scaled(std::cos(angle)) - 2 * layout_parts::leafThickness(door));
  }
  return {};
}

}  // namespace elbowroom
