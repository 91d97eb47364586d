// Distances between the centres of neighbours that stand in a row. All in lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Centre to centre of adjacent toilets, bidets and single basins that face the same way. A vanity with
// several basins is left out: the plan does not say where they are.
std::vector<Measurement> fixtureCentres(const CheckInput&);
// The same among toilets and bidets only (the uniform code asks it of similar fixtures).
std::vector<Measurement> toiletCentres(const CheckInput&);
// How far apart the basins of a double vanity can be set, at most, when each end keeps 15 in (20 in) from the
// centre to what stands beside the vanity. Limit: the asking rule's, times the number of basins less one.
std::vector<Measurement> basinSpacing15(const CheckInput&);
std::vector<Measurement> basinSpacing20(const CheckInput&);

// Edge to edge between neighbouring single basins that face the same way. A counter with several is left out: the plan
// does not say how wide their bowls are.
std::vector<Measurement> basinGaps(const CheckInput&);

}  // namespace elbowroom::checks
