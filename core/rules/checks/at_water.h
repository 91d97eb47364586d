// Working the water of a shower or bath, and what is within an arm's length of it.
#pragma once

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

// Where the water of a head crosses the height of a control, on the plan: from `near` to `far` straight ahead of the
// head's wall and `half` to either side (worked example T29: head tilted 20 degrees, cone of 10 degrees to either
// side of its axis, arm as far as the head stands out of the wall). A head on the ceiling sprays straight down;
// near is then -half and far is half. Angles are assumptions. Precondition: the head is above the control.
struct SprayBand {
  Length near, far, half;
};
SprayBand sprayOnWall(Length arm, Length head_above_control);
SprayBand sprayFromCeiling(Length head_above_control);

// Yes: no hand that works the control is in the water of a head of the same shower or bath: on the head's own
// wall the control is more than `half` to its side, on another wall it is not between near and far. Controls with a
// head.
std::vector<Measurement> controlsOutOfSpray(const CheckInput&);
// From an open side of the shower or bath to its control, round glass and corners: at most the forward reach of the
// shortest adult who stands, the median woman where nobody is named.
std::vector<Measurement> controlsFromOutside(const CheckInput&);
// Lower edge of each head, at least the stature of the tallest who stands. Only with people.
std::vector<Measurement> headsOverTallest(const CheckInput&);
// Length of a hand spray's hose, at least the way from the lower end of its rail to the farthest corner of its shower
// or bath at the height of a seat (17 in), round corners of walls. Asked where it is not stated.
std::vector<Measurement> hosesReachCorners(const CheckInput&);
// From each shower or bath to the nearest switch, round glass and corners, at least the forward reach of the tallest
// adult, the 95 % man where nobody is named. A switch that is part of a listed shower does not count.
std::vector<Measurement> switchesOutOfReach(const CheckInput&);
// From an open side of each shower or bath, and from the front of each basin, to the nearest bar, hook or heater for
// a towel: at most the forward reach of the shortest adult, the median woman where nobody is named. Only where one
// is placed in the room.
std::vector<Measurement> towelsAtShowers(const CheckInput&);
std::vector<Measurement> towelsAtBasins(const CheckInput&);

}  // namespace elbowroom::checks
