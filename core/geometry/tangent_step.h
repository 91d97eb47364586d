// Private to core/geometry: what limits a moving shape, as half planes, and the best small step among them.
#pragma once

#include <array>
#include <optional>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {

// A limit seen from a point: how far off it is, and the direction away from it.
struct Pull {
  double distance;
  Vec away;
  int edge;
};

// The nearest few, in order of distance.
inline constexpr int kMostPulls = 7;
struct Pulls {
  std::array<Pull, kMostPulls> item;
  int count = 0;

  void add(const Pull& pull) {
    if (count == kMostPulls && pull.distance >= item[count - 1].distance) return;
    int place = count < kMostPulls ? count++ : kMostPulls - 1;
    while (place > 0 && item[place - 1].distance > pull.distance) {
      item[place] = item[place - 1];
      --place;
    }
    item[place] = pull;
  }
  // The pull of an edge at a place; a corner of two edges is one pull.
  void addFrom(const Span& edge, int index, Vec at) {
    const Vec v = at - edge.nearest(at);
    const double squared = dot(v, v);
    if (squared == 0) return;
    if (count == kMostPulls && squared >= item[count - 1].distance * item[count - 1].distance) return;
    const double d = std::sqrt(squared);
    const Pull pull{d, (1 / d) * v, index};
    for (int j = 0; j < count; ++j)
      if (std::fabs(item[j].distance - d) < 1e-9 && dot(item[j].away, pull.away) > 1 - 1e-12) return;
    add(pull);
  }
};

// The step nearest to `wanted` that keeps every limit at least `radius` off, as far as the tangents tell;
// nullopt when they contradict each other.
std::optional<Vec> nearestStep(const Pulls& pulls, double radius, Vec wanted);

}  // namespace elbowroom::floor_kernel
