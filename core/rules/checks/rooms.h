// What depends on what kind of room it is.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Inside depth, from the wall behind the toilet to what stands opposite, of a room with nothing but a toilet;
// a length.
std::vector<Measurement> toiletRoomDepths(const CheckInput&);
// Leaf width of each door, a length.
std::vector<Measurement> doorLeaves(const CheckInput&);

// Yes: a door of a room that is stated to be a toilet compartment swings out, folds or slides. One per door.
std::vector<Measurement> compartmentDoors(const CheckInput&);
// Yes: the floor is slip-resistant (room's fact slip_resistant_floor).
std::vector<Measurement> slipResistantFloor(const CheckInput&);

}  // namespace elbowroom::checks
