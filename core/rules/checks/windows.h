// Windows: daylight and air of the room, safety glass, things before them.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Glass of all windows together, and the part of it that opens; areas. Only for a room without a fan; without
// a window either it is not known (the plan may leave both out). A window whose glass is not stated has no
// more glass than its opening.
std::vector<Measurement> windowGlass(const CheckInput&);
std::vector<Measurement> windowOpens(const CheckInput&);
// Yes: safety glass. Windows with a sill lower than `sizes[0]` and within `sizes[1]`, straight across the
// floor, of a bath or shower; those further off or higher are left out.
std::vector<Measurement> glassNearWater(const CheckInput&);
// The same, only windows in a wall that encloses the bath or shower or stands opposite its open side.
std::vector<Measurement> glassFacingWater(const CheckInput&);
// Yes: no fixture taller than the sill stands before a window. Baths and showers may have a window within.
std::vector<Measurement> windowsFree(const CheckInput&);

}  // namespace elbowroom::checks
