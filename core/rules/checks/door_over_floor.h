// Doors that swing over the floor which fixtures need (2010 ADA Standards 603.2.3). Swinging over the turning space is
// allowed and not asked about.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: the door's swing stays off the clear floor of every fixture (a toilet's 60 by 56 in from its walls, 30 by
// 48 in before a basin, 30 in along a bath or shower); or, with sizes, a rectangle of sizes[0] by sizes[1] lies on
// the bare floor of the room beyond the swing, at any angle. One per door that swings in; a toilet, basin, bath or
// shower has to be there.
std::vector<Measurement> doorsOverClearFloor(const CheckInput&);

}  // namespace elbowroom::checks
