// What depends on what kind of room it is.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Inside depth, from the wall behind the toilet to what stands opposite, of a room with nothing but a toilet;
// a length.
std::vector<Measurement> toiletRoomDepths(const CheckInput&);
// Leaf width of each door, a length.
std::vector<Measurement> doorLeaves(const CheckInput&);

}  // namespace elbowroom::checks
