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

  P local(Point p) const;
  P world(P q) const;
  std::vector<P> local(const Outline& ring) const;

  double reach() const { return reach_; }
  double opening() const { return opening_; }  // radians, 0 to pi
  P closedTip() const { return {reach_, 0}; }
  P openTip() const { return {reach_ * std::cos(opening_), reach_ * std::sin(opening_)}; }
  // Towards the inside from the open position; from the closed one it is +y.
  P openInward() const { return {std::sin(opening_), -std::cos(opening_)}; }

  // The part of a..b (0 to 1) inside the sector, `depth` away from its closed side, open side and arc.
  Interval within(P a, P b, double depth) const;
  // The point at that depth that the leaf passes first. Precondition: `depth` < reach.
  P firstAtDepth(double depth) const;
  bool contains(P p, double depth) const;
  P nearestTo(P p) const;

 private:
  P origin_, along_, aside_;
  double reach_, opening_;
};

// Rounding must not turn a contact of exactly kContact into a clash.
inline const double kForgiven = kContact.inches() + 1e-7;

}  // namespace elbowroom::kernel
