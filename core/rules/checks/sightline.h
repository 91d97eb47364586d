// What shows through the open door.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Share of each toilet, in per cent of the angle it fills, that shows through a door as far open as it goes: the
// worst of all doors and of three places of the eye on the doorway's centreline, at the near and the far
// distance outside the wall and half-way between. sizes: near, far.
std::vector<Measurement> toiletsSeen(const CheckInput&);

}  // namespace elbowroom::checks
