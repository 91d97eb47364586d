// What the Canadian electrical code asks of receptacles and switches. Level distances on the plan, lengths, from the
// nearest edge of the box.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Each receptacle to the bath or shower that leaves it least to spare, not through a wall or fixed glass; what these cut
// off altogether is left out. `sizes[0]`, never nearer, is the limit instead where no place farther off is practicable
// (fact no_farther_place, asked for where that decides).
std::vector<Measurement> receptaclesFarFromWater(const CheckInput&);
// The nearest receptacle to any one of the basins, to the edge of its bowl and the centre of the box. One for the room.
std::vector<Measurement> receptacleAtAnyBasin(const CheckInput&);
// Yes: protected against earth faults. Receptacles within `sizes[0]` of a basin, bath or shower.
std::vector<Measurement> receptaclesGfciAtWater(const CheckInput&);
// Inside edge of the bowl to the wall, for each receptacle on the wall straight behind a bowl and above its rim.
std::vector<Measurement> bowlsBeforeReceptacles(const CheckInput&);
// Each light switch to the nearest bath or shower. `sizes[0]` is the limit instead of one on a GFCI (fact switch_gfci,
// asked for where that decides).
std::vector<Measurement> switchesFarFromWater(const CheckInput&);

}  // namespace elbowroom::checks
