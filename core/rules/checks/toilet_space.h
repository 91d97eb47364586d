// Other spaces about a toilet than the 2010 one (toilet_clearance.h). Lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Clear width at the toilet over a depth of sizes[0] from the rear wall, of which the nearer side counts for at
// most sizes[2] from the centreline; where the room is less deep, its depth. What is at most sizes[3] deep and on
// the rear wall may stand within it when a width of sizes[4] stays free (ICC A117.1 Type B, option A).
std::vector<Measurement> toiletSpacesEitherSide(const CheckInput&);
// Centreline to the nearer side, wall or fixture; the farther side.
std::vector<Measurement> toiletNearSides(const CheckInput&);
std::vector<Measurement> toiletFarSides(const CheckInput&);
// Centreline to the side where a grab bar goes (Fair Housing guidelines 7(2)(b)(iv)): a wall or bath, of two the
// one that leaves more spare on both; to the other side.
std::vector<Measurement> toiletGrabSides(const CheckInput&);
std::vector<Measurement> toiletOtherSides(const CheckInput&);
// Edge of the toilet to what stands beside it: the nearer side; the farther side, over sizes[0] from the front of
// the bowl back.
std::vector<Measurement> toiletNearEdges(const CheckInput&);
std::vector<Measurement> toiletFarEdges(const CheckInput&);
// Rear wall to the foremost point of the bowl.
std::vector<Measurement> toiletProjections(const CheckInput&);
// Depth of the space about a toilet from the rear wall over a width of sizes[0] from the side wall, with nothing
// but the toilet in it, or that width where it lacks less. A basin may reach in from the front by sizes[1].
std::vector<Measurement> toiletCirculation(const CheckInput&);
// Sides of a room that is stated to be a toilet compartment, square to and along the toilet's centreline; the
// latter with a limit of sizes[0] instead when the toilet hangs on the wall.
std::vector<Measurement> compartmentWidths(const CheckInput&);
std::vector<Measurement> compartmentDepths(const CheckInput&);

}  // namespace elbowroom::checks
