// Distances sideways: centreline or edge of a fixture to what stands beside it. All in lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Centreline of each toilet or bidet to the nearer side wall, fixture or other obstruction.
std::vector<Measurement> toiletSides(const CheckInput&);
// Centreline of each toilet to the nearer side wall; fixtures do not count (2010 ADA Standards 604.2).
std::vector<Measurement> toiletSideWalls(const CheckInput&);
// Centreline of each basin; vanities with one basin count it at the middle, those with more are left out.
std::vector<Measurement> basinSides(const CheckInput&);
// Edge of each free-standing basin to the side wall, a bath or another basin.
std::vector<Measurement> basinEdges(const CheckInput&);

}  // namespace elbowroom::checks
