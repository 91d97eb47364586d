// Heights of what a seated person reads, reaches and works, and what sticks out of walls. Lengths; one
// measurement per thing.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Lower edges of mirrors over basins and counters, of all other mirrors, of all; upper edges of all. Make-up
// mirrors are left out.
std::vector<Measurement> mirrorBottomsOverBasins(const CheckInput&);
std::vector<Measurement> mirrorBottomsElsewhere(const CheckInput&);
std::vector<Measurement> mirrorLowerEdges(const CheckInput&);
std::vector<Measurement> mirrorUpperEdges(const CheckInput&);
// Upper sides of shelves outside showers and baths.
std::vector<Measurement> shelfTops(const CheckInput&);
// Middles of switches and receptacles (but the one for a toilet's seat). Over something with knee space that
// is deeper than sizes[0], at most sizes[1]; over something without that is deeper than sizes[2], at most
// sizes[3].
std::vector<Measurement> operablePartHeights(const CheckInput&);
// Depth of what stands under them; the limit without knee space is sizes[0].
std::vector<Measurement> reachesAcross(const CheckInput&);
// Height of what stands under them and has no knee space.
std::vector<Measurement> reachesOver(const CheckInput&);
// How far things stick out of the wall whose lower edge is between sizes[0] and sizes[1] above the floor,
// with nothing on the floor under them. Grab bars and what belongs to a shower are left out.
std::vector<Measurement> protrusions(const CheckInput&);

}  // namespace elbowroom::checks
