// The shortest way in the plan from a point to a thing, as a taut string runs: straight, and round the corners of
// walls and the ends of screens.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"

namespace elbowroom {

struct TautWay {
  Length length;
  std::vector<Point> points;  // from the start by each corner to the nearest place of the target
};

// nullopt: the target cannot be reached, or the start lies outside the room. Exact up to rounding: every piece runs
// between the start, corners of the room, ends of screens and the target's nearest place. To run along a wall or
// touch a corner or the free end of a screen is no crossing; between a screen and the wall it stands at (within 1 in),
// and where two screens meet, there is no slit. A target that is a point has both ends there. Screens are
// few; the work grows with the cube of corners and screens.
std::optional<TautWay> tautWay(Point from, Segment target, const Outline& room, const std::vector<Segment>& screens);

}  // namespace elbowroom
