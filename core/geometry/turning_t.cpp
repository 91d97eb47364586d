// T-shaped turning space: a bar of 60 x 36 across the end of a base 36 wide, 60 long over all
// (2010 Standards 304.3.2).
#include "core/geometry/box_pattern.h"

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

}  // namespace elbowroom
