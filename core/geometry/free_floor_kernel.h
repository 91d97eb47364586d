// Private to core/geometry: the raw edges of a room and its obstacles in inches, and searches over them.
//
// f(p) = min(signed distance to the room, signed distances to the obstacles) changes by at most the distance
// moved, so one value at a square's middle bounds f over the whole square. All searches below halve squares
// and drop those whose bound is too low; none needs an overlay.
#pragma once

#include <algorithm>
#include <cmath>
#include <mutex>
#include <optional>
#include <vector>

#include "core/geometry/edge_grid.h"
#include "core/geometry/free_floor.h"
#include "core/geometry/vec.h"

namespace elbowroom::floor_kernel {

using kernel::cross;
using kernel::dot;
using kernel::norm;
using kernel::toInches;
using kernel::toPoint;
using kernel::Vec;

struct Span {
  Vec a, d;            // from a to a + d
  double inverse = 0;  // 1 / |d|^2, 0 for a point

  Vec nearest(Vec p) const {
    const double t = dot(p - a, d) * inverse;
    return a + std::min(1.0, std::max(0.0, t)) * d;
  }
  double distanceSquared(Vec p) const {
    const Vec v = p - nearest(p);
    return dot(v, v);
  }
};

struct Edge : Span {
  int ring = 0;
};

// Ring 0 is the room, ring i + 1 is obstacle i.
struct Ring {
  int first = 0, last = 0;  // edges [first, last)
  Vec low, high;

  // No more than the squared distance to any of its edges.
  double squareTo(Vec p) const {
    const Vec off{std::max({0.0, low.x - p.x, p.x - high.x}), std::max({0.0, low.y - p.y, p.y - high.y})};
    return dot(off, off);
  }
};

struct Value {
  double f = 0;
  int edge = -1;  // the edge that limits
};

// A square of the plan by the value at its middle.
struct Square {
  Vec at;
  double f = 0;
};
// All squares of one size whose value plus half diagonal is at least `radius`, the roomiest first.
struct Squares {
  double half = 0;  // of the side, at most 4 in
  double radius = 0;
  std::vector<Square> all;
};

struct Kernel {
  Outline room;
  std::vector<Outline> obstacles;
  std::vector<Edge> edges;
  std::vector<Ring> rings;
  bool has_floor = false;  // the room encloses something

  Kernel(Outline room_ring, std::vector<Outline> obstacle_rings);

  bool inside(const Ring& ring, Vec p) const;
  bool isFree(Vec p) const;
  Value valueAt(Vec p) const;

  // The largest circle is asked for by several figures of one step, so it is kept.
  const Circle& largest() const;
  // Where a disc of 12 in or more may lie: what every search for a turning shape or clear floor starts from.
  const Squares& squares() const;
  static constexpr double kSquaresFor = 12;
  // Kept as well: all searches start from it.
  const EdgeGrid& grid() const;

 private:
  mutable std::once_flag largest_once_, squares_once_, grid_once_;
  mutable Circle largest_;
  mutable Squares squares_;
  mutable std::optional<EdgeGrid> grid_;
};

// circle_search.cpp
Squares searchSquares(const Kernel& kernel, double radius);
Circle searchLargestCircle(const Kernel& kernel);
// The largest that holds both places, within 0.001 in, if it is larger than `than` by more than that; otherwise any
// such, or radius 0.
Circle searchLargestCircleHolding(const Kernel& kernel, Vec p, Vec q, double than);
std::optional<Circle> searchNearestCircle(const Kernel& kernel, double radius, Vec near);

}  // namespace elbowroom::floor_kernel

namespace elbowroom {
struct FreeFloor::Kernel : floor_kernel::Kernel {
  using floor_kernel::Kernel::Kernel;
};
}  // namespace elbowroom
