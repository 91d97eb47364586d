// What a sloped ceiling leaves of a shower at the height up to which its size has to be kept. Showers over which no
// ceiling is so low are left out: what is asked of the whole inside answers them.
//
// sizes[0]: that height above the drain. How high the drain lies is asked for where that decides (curb,
// curb_above_drain); without a curb it is taken at the floor.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Area of the part below a ceiling that is high enough.
std::vector<Measurement> showerAreasUp(const CheckInput&);
// Disc within that part, a length; limit sizes[1], if any, where the part has 1300 sq in (IRC P2708.1 exception 2).
std::vector<Measurement> showerDiscsUp(const CheckInput&);

}  // namespace elbowroom::checks
