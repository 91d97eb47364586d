// Private to core/geometry: a leaf's sector as a convex set, a disc cut by two half planes, in its own frame:
// hinge at the origin, closed leaf along +x, opening counter-clockwise whichever way the real one turns.
#pragma once

#include <numbers>

#include "core/geometry/kernel.h"
#include "core/geometry/sweep.h"

namespace elbowroom::kernel {

class Sector {
 public:
  Sector(const Leaf& leaf, Length reach);

  Vec local(Point p) const;
  Vec world(Vec q) const;
  std::vector<Vec> local(const Outline& ring) const;

  double reach() const { return reach_; }
  double opening() const { return opening_; }  // radians, 0 to pi
  Vec closedTip() const { return {reach_, 0}; }
  Vec openTip() const { return reach_ * open_; }
  // Towards the inside from the open position; from the closed one it is +y.
  Vec openInward() const { return {open_.y, -open_.x}; }

  // The part of a..b (0 to 1) inside the sector, `depth` away from its closed side, open side and arc.
  Interval within(Vec a, Vec b, double depth) const;
  // The point at that depth that the leaf passes first. Precondition: `depth` < reach.
  Vec firstAtDepth(double depth) const;
  bool contains(Vec p, double depth) const;
  Vec nearestTo(Vec p) const;

 private:
  Vec origin_, along_, aside_;
  double reach_, opening_;
  Vec open_;  // unit, along the open leaf
};

// Rounding must not turn a contact of exactly kContact into a clash.
inline const double kForgiven = kContact.inches() + 1e-7;

}  // namespace elbowroom::kernel
