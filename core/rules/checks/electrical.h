// Receptacles, switches, lights, circuits: what the electrical code asks of a bathroom. What is to be removed
// is left out. Heights are those of the centre of the box; distances are level, on the plan.
#pragma once

#include <string_view>

#include "core/rules/rule.h"

namespace elbowroom::checks {

// ---- the receptacle that serves each basin: of those on the wall behind it or beside it one that is not too
// low (kBasinDrop), of these the nearest; else the nearest of all. Without any receptacle the distance is not
// known and the others say nothing. From the edge of the bowl to the centre of the box, a length. Where the
// bowl's width is not stated (bowl_width) it is asked for if it decides.
std::vector<Measurement> basinReceptacles(const CheckInput&);
// Yes: it is on the wall behind the basin or on one that meets that wall at its end.
std::vector<Measurement> basinReceptacleWalls(const CheckInput&);
// How far it is below the top of the basin or counter (0: not below), and how far above; lengths.
std::vector<Measurement> basinReceptacleDrops(const CheckInput&);
std::vector<Measurement> basinReceptacleRises(const CheckInput&);
// Yes: one need not reach across another basin of the counter to get at it.
std::vector<Measurement> basinReceptaclesAcross(const CheckInput&);

// ---- receptacles at a bath or shower. Measured to the nearest edge of the receptacle, lengths.
// To the water, unless a wall or fixed glass stands between; those higher than `sizes[0]` above the rim or
// threshold are left out, and the one of a toilet's seat (toiletSeatReceptacles). In a room
// where no wall is as far as the limit, the receptacle of a basin may be on the farthest wall: its limit is
// that wall's distance.
std::vector<Measurement> receptaclesOffWater(const CheckInput&);
// The same through everything, and only those not lower than the rim; those lower.
std::vector<Measurement> receptaclesOffWaterAboveRim(const CheckInput&);
std::vector<Measurement> receptaclesOffWaterBelowRim(const CheckInput&);
// Yes: no part of it is in or over a bath or shower.
std::vector<Measurement> receptaclesNotOverWater(const CheckInput&);
// Yes: the receptacle for a toilet's electric seat, nearer than `sizes[0]` to a bath or shower, is behind the
// toilet but not behind its tank, or at the toilet's other side.
std::vector<Measurement> toiletSeatReceptacles(const CheckInput&);
// From the nearest receptacle's box to each toilet with an electric seat, a length; without one not known.
std::vector<Measurement> receptaclesAtToilets(const CheckInput&);

// ---- lights, switches
// Hanging lights on the ceiling to the nearest bath or shower, a length; those that end higher than
// `sizes[0]` above the rim are left out. How it hangs is asked for where that decides.
std::vector<Measurement> hangingLightsOffWater(const CheckInput&);
// Yes: listed for damp or wet places. Lights within the outline of a bath or shower, or, with `sizes[1]`, as
// near to it; lower than `sizes[0]` above its rim.
std::vector<Measurement> lightsDamp(const CheckInput&);
// Yes: listed for wet places. Lights within the outline that are not higher than the shower head on its wall.
std::vector<Measurement> lightsWet(const CheckInput&);
// Yes: it is not in a bath or shower, or part of a shower that is listed with it.
std::vector<Measurement> switchesNotInWater(const CheckInput&);
// Yes: a light of the bathroom is switched at a wall.
std::vector<Measurement> lightsSwitched(const CheckInput&);

// ---- protection and circuits, as stated
// Yes: GFCI; all receptacles of a bathroom. In another room those within `sizes[0]` of a bath or shower.
std::vector<Measurement> receptaclesGfci(const CheckInput&);
std::vector<Measurement> receptaclesGfciNearWater(const CheckInput&);
// Yes: tamper-resistant.
std::vector<Measurement> receptaclesTamperResistant(const CheckInput&);
// Yes: it does not face up, or is an assembly that is listed for a counter; only where stated.
std::vector<Measurement> receptaclesNotFacingUp(const CheckInput&);
// Rating of the circuit of a bathroom's receptacles, an amount in amperes.
std::vector<Measurement> receptacleCircuits(const CheckInput&);
// Yes: that circuit serves bathroom receptacles only, or this bathroom only.
std::vector<Measurement> circuitsOfBathrooms(const CheckInput&);
// Yes: no breaker panel is in the bathroom.
std::vector<Measurement> panelsElsewhere(const CheckInput&);
// Baths with a pump. Yes: a circuit of its own; GFCI. Its receptacle from the service opening, a length.
std::vector<Measurement> pumpCircuits(const CheckInput&);
std::vector<Measurement> pumpsGfci(const CheckInput&);
std::vector<Measurement> pumpReceptacles(const CheckInput&);
// Yes: the heating cable in the floor is on GFCI. Rooms where one is stated.
std::vector<Measurement> floorHeatGfci(const CheckInput&);

// NEC 210.52(D): as far below the top of the basin a receptacle may be.
inline constexpr Length kBasinDrop = Length::nanometres(304'800'000);  // 12 in

}  // namespace elbowroom::checks
