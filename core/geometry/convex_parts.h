// Private to core/geometry: a solid as convex pieces that hold all of its boundary.
#pragma once

#include <vector>

#include "core/geometry/point.h"

namespace elbowroom::kernel {

// Convex outlines, counter-clockwise, or single edges of two points. None reaches beyond the solid, and each
// edge of the solid lies in one; what lies deep within it may be left out. Precondition: a simple ring,
// either way round.
std::vector<Outline> convexParts(const Outline& solid);

}  // namespace elbowroom::kernel
