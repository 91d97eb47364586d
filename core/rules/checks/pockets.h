// What a pocket door asks of its wall, and what hangs before the pocket.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: no box, pipe, recess or bar that needs the wall's depth stands where the leaf parks. One per pocket.
std::vector<Measurement> pocketBoxes(const CheckInput&);
// How far the screws of each thing hung before a pocket go in past the wall's face, a length (fact
// screw_length).
std::vector<Measurement> pocketScrews(const CheckInput&);
// Thickness of each pocket's wall; limit 4 1/2 in, for a leaf of 1 3/4 in or more 6 1/2 in.
std::vector<Measurement> pocketWallThicknesses(const CheckInput&);
// Yes: the wall of the pocket carries no load (fact load_bearing; the wall is the first subject).
std::vector<Measurement> pocketLoads(const CheckInput&);

}  // namespace elbowroom::checks
