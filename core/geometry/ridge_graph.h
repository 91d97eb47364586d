// Private to core/geometry: the points equally far from two or more features of the boundary (the segment
// Voronoi diagram), limited to free floor: where the largest discs travel.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {

struct RidgeNode {
  Vec at;
  double f = 0;  // radius of the free disc here
};

// The narrowest point of a stretch that is narrower than both its ends.
struct Saddle {
  double s = 0;  // parameter along the edge
  Vec at;
  double f = 0;
};

// Between two nodes; `s` grows along it and the radius follows from the two sites.
struct RidgeEdge {
  int from = 0, to = 0;
  double s_from = 0, s_to = 0;
  std::optional<Saddle> saddle;
  bool even = false;  // between two parallel edges: the same radius all along

  // Straight edge: start + s * along. Parabola: focus height over the directrix, s along the directrix.
  Vec start, along, up;
  double height = 0;  // of the focus over the directrix, 0 for a straight edge
  double focus_s = 0;
  // The sites: a point has a == b.
  Vec site_a[2], site_b[2];

  Vec at(double s) const {
    if (height == 0) return start + s * along;
    const double x = s - focus_s;
    return start + s * along + ((x * x + height * height) / (2 * height)) * up;
  }
  double radius(Vec p) const;
  double distanceToSite(int which, Vec p) const;
  double parameter(Vec p) const { return dot(p - start, along); }
};

struct RidgeGraph {
  std::vector<RidgeNode> nodes;
  std::vector<RidgeEdge> edges;
};

RidgeGraph ridgesOf(const Kernel& kernel);

}  // namespace elbowroom::floor_kernel
