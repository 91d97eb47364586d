// T-shaped turning space: a bar of 60 x 36 across the end of a base 36 wide, 60 long over all
// (2010 Standards 304.3.2).
#include <algorithm>

#include "core/geometry/pattern_search.h"

namespace elbowroom {

using namespace floor_kernel;

Outline turningTOutline(Placed place) {
  const Frame frame = Frame::turnedBy(place.turn);
  const Vec center = toInches(place.center);
  Outline outline;
  for (const Vec corner : {Vec{-30, -18}, Vec{-6, -18}, Vec{-6, -30}, Vec{30, -30}, Vec{30, 30}, Vec{-6, 30},
                           Vec{-6, 18}, Vec{-30, 18}})
    outline.push_back(toPoint(center + frame.outOf(corner)));
  return outline;
}

std::optional<Placed> FreeFloor::turningT() const {
  if (!kernel_->has_floor) return std::nullopt;
  // Bar and base as rectangles that overlap, so that their common side is no gap. 18 in about the square's
  // middle lie inside the T on every side.
  const Pattern pattern{{{{12, 0}, {18, 30}}, {{0, 0}, {30, 18}}}, 18, std::hypot(30.0, 30.0)};
  const Ring& room = kernel_->rings[0];
  PatternSearch search(*kernel_, pattern, 0.5 * (room.low + room.high));
  search.anyPlaceWillDo();
  std::vector<Angle> turns = turnsToTry(*kernel_, 360);
  // Square to the plan first: easiest to lay out and to read.
  std::stable_partition(turns.begin(), turns.end(),
                        [](Angle a) { return a.microdegrees() % 90'000'000 == 0; });
  for (const Angle turn : turns)
    if (search.tryTurn(turn)) break;
  return search.result();
}

}  // namespace elbowroom
