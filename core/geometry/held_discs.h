// Private to core/geometry: the free discs that hold a place and are larger than all such discs beside them.
#pragma once

#include <vector>

#include "core/geometry/free_floor_kernel.h"

namespace elbowroom::floor_kernel {

struct Disc {
  Vec at;
  double radius = 0;
};

// Discs that touch p at their rim grow and shrink as they turn about it: each largest one between two
// smaller. Middles of free discs that hold p are a region about p, and so is every connected part of them
// where the discs are larger than some size: either it reaches the region's edge, and one of the answer's
// discs is in it, or all that can be reached from it without becoming smaller holds p. Radii within 1e-6 in,
// never above the truth. Precondition: p lies on free floor, farther than 0.001 in from every edge.
std::vector<Disc> discsHolding(const Kernel& kernel, Vec p);

}  // namespace elbowroom::floor_kernel
