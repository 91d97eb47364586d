// Benchmark input: a 96 x 120 in room (rectangle, L or angled) with 12 things, one of them dragged along a
// closed path of 256 places, so that no step sees the input of the step before.
#pragma once

#include <cmath>
#include <numbers>
#include <vector>

#include "core/geometry/free_floor.h"
#include "core/geometry/sweep.h"

namespace elbowroom::bench {

inline constexpr int kSteps = 256;

inline Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }

struct Drag {
  Outline room;
  std::vector<std::vector<Outline>> steps;  // the 12 things at each place of the moved one
  Leaf leaf;
  Point near;
};

inline Outline ring(double x, double y, double half_width, double half_depth, int corners) {
  Outline o;
  for (int i = 0; i < corners; ++i) {
    const double a = 2 * std::numbers::pi * i / corners;
    o.push_back(at(x + half_width * std::cos(a), y + half_depth * std::sin(a)));
  }
  return o;
}
inline Outline box(double x, double y, double w, double h, double degrees = 0) {
  return rectangleOutline(Length::fromInches(w), Length::fromInches(h),
                          {at(x + w / 2, y + h / 2), Angle::fromDegrees(degrees)});
}

enum class Shape { rectangle, ell, angled };

inline Drag dragIn(Shape shape) {
  Drag drag;
  switch (shape) {
    case Shape::rectangle:
      drag.room = box(0, 0, 96, 120);
      break;
    case Shape::ell:
      drag.room = {at(0, 0), at(96, 0), at(96, 76), at(70, 76), at(70, 120), at(0, 120)};
      break;
    case Shape::angled:
      drag.room = {at(0, 0), at(96, 0), at(96, 84), at(60, 120), at(0, 120)};
      break;
  }
  std::vector<Outline> things{
      ring(30, 15, 30, 15, 48),  // oval bath
      ring(88, 20, 8, 10, 20),   // bowl
      box(66, 0, 20, 8),         // tank
      box(0, 88, 21, 32),        // vanity, flush in the corner
      ring(10, 80, 7, 7, 16),    // round basin, flush to the vanity
      box(88, 40, 8, 18),        // shelf
      box(0, 34, 12, 20),        // cabinet
      box(22, 112, 24, 8),       // bench
      box(46, 112, 14, 8),       // flush to it
      box(82, 62, 14, 12),       // hamper
      box(2, 58, 6, 10, 12),     // a turned stool
  };
  for (int i = 0; i < kSteps; ++i) {
    const double a = 2 * std::numbers::pi * i / kSteps;
    std::vector<Outline> now = things;
    now.push_back(box(42 + 18 * std::cos(a), 62 + 24 * std::sin(a), 14, 11, 7 * i % 90));
    drag.steps.push_back(now);
  }
  drag.leaf = {at(0, 70), Length::fromInches(30), {0, -1}, Angle::fromDegrees(90)};
  drag.near = at(48, 56);
  return drag;
}

}  // namespace elbowroom::bench
