// Private to core/geometry: where the boundary of a floor comes near itself, the nearest places first.
//
// The boundary is the union of convex parts: the walls, and convex pieces of what stands on the floor. Discs
// of one radius travel between two places unless parts that are nearer to each other than its diameter form a
// ring round one of the places: grown by the radius, convex parts meet in convex lenses, so that every such
// ring is one of straight pieces through the parts and across their necks (nerve theorem). No diagram of the
// floor is needed.
#pragma once

#include <cstddef>
#include <vector>

#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/range.h"

namespace elbowroom::floor_kernel {

// Two parts of the boundary and the nearest points of both.
struct Neck {
  double width = 0;
  int part[2] = {0, 0};
  Vec side[2];
};

class Necks {
 public:
  explicit Necks(const Kernel& kernel);

  int parts() const { return static_cast<int>(parts_.size()); }
  // A fixed place of the part, to be reached from its sides of necks without leaving it.
  Vec anchor(int part) const { return parts_[static_cast<std::size_t>(part)].points.front(); }
  // The i-th of all necks, the narrowest first; nullptr when there is none that is narrower than `width`.
  // Holds until the next call.
  const Neck* at(std::size_t i, double width);
  // The same neck with its sides in the middle, where parallel edges face each other.
  Neck centred(Neck neck) const;

 private:
  struct Part {
    Outline outline;
    std::vector<Vec> points;
    kernel::Range range;
  };
  void add(Outline outline);
  void findMore();
  Neck between(int i, int j) const;

  std::vector<Part> parts_;  // by range.low.x
  std::vector<Neck> found_, wider_;
  double reached_ = -1;  // all necks up to here are in found_
};

}  // namespace elbowroom::floor_kernel
