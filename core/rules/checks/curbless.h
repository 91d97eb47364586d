// Floors of showers: how they fall, and what a shower without a curb or a door needs.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// How far the floor under a curbless shower is lowered and the one outside built up, a length. Limit: the
// drop that its run to the drain takes (core/rules/checks/falls.h): from the open side to a linear drain,
// from the corner to a drain in the middle.
std::vector<Measurement> curblessDrops(const CheckInput&);
// Steepest way to a drain in the middle of a rectangular shower with a level rim, an amount in per cent. Only
// showers with a point drain.
std::vector<Measurement> centreFalls(const CheckInput&);
// Yes: a linear drain. Curbless showers in a plan that names a person with a wheelchair.
std::vector<Measurement> linearDrains(const CheckInput&);
// Fall of the floor, an amount in per cent, of the same showers.
std::vector<Measurement> fallsForChair(const CheckInput&);
// Longer side of the same showers, a length.
std::vector<Measurement> curblessLengths(const CheckInput&);
// From the head to the nearest open side of a shower that has glass and no door, a length.
std::vector<Measurement> headsFromOpenSide(const CheckInput&);
// Height of each pane of glass of a shower, a length; only stated ones.
std::vector<Measurement> glassHeights(const CheckInput&);
// Narrowest fixed piece of glass of each shower, a length: a side without a door, or what a door leaves of its side.
std::vector<Measurement> fixedGlassWidths(const CheckInput&);
// Shorter side of each shower without curb, glass and curtain that is open on two sides or more, a length. Whether
// there is a curtain is asked where the side is too short without one.
std::vector<Measurement> openWetFloors(const CheckInput&);
// Step at each door where the floor is built up for a shower (room's fact floor_build_up), a length; only
// where that is stated and greater than 0.
std::vector<Measurement> doorSteps(const CheckInput&);

}  // namespace elbowroom::checks
