// EXPECT-COMPILES
#include <string>

#include "core/base/id.h"
#include "core/base/length.h"
#include "core/geometry/point.h"

using namespace elbowroom;
using namespace elbowroom::literals;

void mix() {
  [[maybe_unused]] const Length a = 3_in, b = 4_in;
  [[maybe_unused]] const Area area = a * b;
  [[maybe_unused]] const Angle angle = 90_deg;
  [[maybe_unused]] const ElementId id{"wc"};
  [[maybe_unused]] const Point p{a, b};
  [[maybe_unused]] const Vector v = p - p;
#ifndef CONTROL
  Length sum = a + b - 2 * a;
  bool shorter = a < b;
  double ratio = a / b;
  Area twice = a * b + area;
  Point moved = p + v;
  Angle turned = angle + 45_deg;
  bool same = id == ElementId{"wc"};
  (void)sum, (void)shorter, (void)ratio, (void)twice, (void)moved, (void)turned, (void)same;
#endif
}
