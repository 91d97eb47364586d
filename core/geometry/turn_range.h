// Private to core/geometry: stretches of turns, and how far a pattern's pieces reach at all turns of one.
//
// All cells of a search halve their turns alike, so what hangs on the turns alone is worked out once for all.
#pragma once

#include <deque>
#include <vector>

#include "core/geometry/rigid_pattern.h"

namespace elbowroom::floor_kernel {

struct TurnRange {
  double turn = 0, spread = 0;  // turn - spread to turn + spread
  double chord = 0;             // how far a place one inch away moves from the middle to an end
  Axes axes;                    // at the middle
  int parts = -1;               // the first of those it is split into; -1: not yet
};

// What lies between the limits along `axis` lies between two sides of a piece at every turn of the range.
struct Slab {
  Vec axis, lean;  // lean: the axis without its signs
  double least, most;
};
// Across and along, at the first turn of the range and at the last.
using Slabs = Slab[4];

class TurnRanges {
 public:
  explicit TurnRanges(const RigidPattern& pattern) : pattern_(pattern) {}

  int add(double turn, double spread);
  // The first of `count` equal parts, in order; a range is always split into as many.
  int split(int range, int count);
  const TurnRange& operator[](int range) const { return ranges_[static_cast<std::size_t>(range)]; }
  const Slabs& slabs(int range, std::size_t piece) const {
    return slabs_[static_cast<std::size_t>(range) * pattern_.pieces.size() + piece].all;
  }

 private:
  struct OfPiece {
    Slabs all;
  };
  const RigidPattern& pattern_;
  std::deque<TurnRange> ranges_;
  std::deque<OfPiece> slabs_;  // for each range all pieces
};

}  // namespace elbowroom::floor_kernel
