// A way across the free floor from one point to another, and its narrowest place.
#pragma once

#include "core/geometry/measure.h"

namespace elbowroom {

struct Route {
  bool reachable = false;
  Length width;           // diameter of the largest disc that can travel all the way; never above the truth
  Point narrowest;        // middle of the narrowest place
  Segment sides;          // the two nearest points that pinch there
};

}  // namespace elbowroom
