// Floor that a person in a wheelchair needs to open, pass and close a door, on the room's side only: what lies
// behind the wall is not in the plan (2010 ADA Standards 404.2.4, tables 404.2.4.1 and 404.2.4.2).
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// One per door, a length: the depth or width of the rectangle that the table asks for, whichever decides, with
// its own limit. A leaf that swings in is pulled from the room, one that swings out is pushed. A closer counts
// only where the plan states it. Walls and fixtures count over their whole outline, knee space or not. The
// approach from the front is measured first; one along the wall only where the wall leaves a run of 48 in by
// 36 in to come from there.
// Sizes: depth of a push from the front, 48 in (52 in for new buildings by A117.1-2017).
std::vector<Measurement> doorManoeuvring(const CheckInput&);
// Wall beside the latch on the room's side, a length, for doors that swing in. One per hinged door.
std::vector<Measurement> doorNibs(const CheckInput&);

}  // namespace elbowroom::checks
