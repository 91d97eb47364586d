// Grab bars and water controls of baths and showers. Lengths where nothing else is said; what the plan does
// not have is not measured. Which end of a bath the control is at follows from where the plan puts it.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Bars behind a bath that has any: how many, a count. Each one: its length, from the head end to where it
// begins, from the control end to where it ends. With a seat built in at the head end the limit there is
// sizes[0].
std::vector<Measurement> bathBackBars(const CheckInput&);
std::vector<Measurement> bathBackBarLengths(const CheckInput&);
std::vector<Measurement> bathBackBarsFromHead(const CheckInput&);
std::vector<Measurement> bathBackBarsFromControl(const CheckInput&);
// Top of the lower of two bars above the rim.
std::vector<Measurement> bathLowerBars(const CheckInput&);
// Length of the bars on the wall at the control end and at the head end (none asked for beside a built-in
// seat).
std::vector<Measurement> bathControlBars(const CheckInput&);
std::vector<Measurement> bathHeadBars(const CheckInput&);
// Yes: each control is on an end wall, above the rim and below the top of the bar there, and between the open
// side and the middle of the bath.
std::vector<Measurement> bathControlPlaces(const CheckInput&);
// Stated of baths with a built-in seat: its height and depth. Yes: no track on the rim.
std::vector<Measurement> bathSeatHeights(const CheckInput&);
std::vector<Measurement> bathSeatDepths(const CheckInput&);
std::vector<Measurement> bathRimsFree(const CheckInput&);

// Middles of the controls of transfer showers, and of the roll-in kinds, above the floor.
std::vector<Measurement> transferControlHeights(const CheckInput&);
std::vector<Measurement> rollInControlHeights(const CheckInput&);
// The same on the wall opposite the seat, from the middle of the shower toward its open side; negative behind
// it.
std::vector<Measurement> transferControlReaches(const CheckInput&);
// Controls of roll-in showers with a seat: from the wall behind the seat.
std::vector<Measurement> controlsFromSeats(const CheckInput&);
// The bar behind a transfer shower: how far it reaches from the wall of the control.
std::vector<Measurement> transferBackBars(const CheckInput&);
// Bars of roll-in showers: the nearer end to a wall beside, the other one too where both walls are near; at
// the seat nothing is asked.
std::vector<Measurement> rollInBarsFromWalls(const CheckInput&);

// Walls of roll-in showers that have a bar along them, of those that have any: a count. Limit: the wall behind and those
// beside it, without the one of a seat. Yes: there is a bar on the wall of a transfer shower's control; of those with
// any bar, where the plan says which wall that is.
std::vector<Measurement> rollInWallsWithBars(const CheckInput&);
std::vector<Measurement> transferControlBars(const CheckInput&);

}  // namespace elbowroom::checks
