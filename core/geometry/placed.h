// Where a shape stands.
#pragma once

#include "core/geometry/point.h"

namespace elbowroom {

struct Placed {
  Point center;
  Angle turn;  // of the shape's long side against +x
};

}  // namespace elbowroom
