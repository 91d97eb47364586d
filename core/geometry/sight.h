// What an eye sees through an opening, on the plan: visibility from a point among opaque segments. Exact: the rays
// are cut where a segment begins, ends or crosses another, and between two cuts one segment is nearest.
#pragma once

#include "core/geometry/point.h"

namespace elbowroom {

// Rays leave the eye and pass between the opening's two ends; the first opaque segment ends them. Segments may
// touch, cross and lie anywhere; what lies behind the eye does not count. Precondition: both ends of the opening
// lie ahead of an eye that looks at its middle.

// The region seen from the opening onward, counter-clockwise, no farther than `reach` from the eye (measured
// along the line to the opening's middle) where nothing ends the view.
Outline seenThrough(Point eye, Segment opening, const std::vector<Segment>& opaque, Length reach);

// How much of a thing is seen: of the angle that its outline fills at the eye if nothing stood before it, the
// share from which rays reach it.
struct Seen {
  double share = 0;  // 0 to 1
  Point at;          // a point of its outline in the middle of the widest part seen; the eye when none is
};
Seen seenOf(const Outline& thing, Point eye, Segment opening, const std::vector<Segment>& opaque);

}  // namespace elbowroom
