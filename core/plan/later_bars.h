// Where a grab bar may come later: at toilets, baths and showers that stand with their back to a wall.
#pragma once

#include <vector>

#include "core/plan/layout.h"

namespace elbowroom {

// Height of the wall that is reinforced for bars (Fair Housing Act Design Manual chapter 6, read second hand).
inline constexpr Length kBackingLow = Length::nanometres(762'000'000);   // 30 in
inline constexpr Length kBackingHigh = Length::nanometres(965'200'000);  // 38 in

// A stretch of a wall (index into Layout::walls), from its left end, free of openings at the height of bars
// (30 to 38 in).
struct LaterBar {
  ElementId fixture;
  int wall = -1;
  Length from, to;
};

// Behind a toilet 24 in, centred (2010 ADA Standards 604.5.2 exception 1; Fair Housing Act Design Manual chapter 6);
// beside it, on the nearer of the two walls that meet its wall, 12 to 54 in from the wall behind it (604.5.1), where
// that wall is within 24 in of its centreline (farther off nobody holds on to it: our own figure). At a bath or
// shower every wall along its back and ends, over its whole length (Design Manual chapter 6: the back wall as long as
// possible; 2010 ADA Standards 608.3).
std::vector<LaterBar> laterBars(const Layout&);

}  // namespace elbowroom
