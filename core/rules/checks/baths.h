// Baths beyond the floor before them: room to clean, steps, two bathers, the reach of the valve.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// From each free-standing bath to the nearest wall, a length.
std::vector<Measurement> bathWallGaps(const CheckInput&);
// Yes: no steps lead up to it, or a grab bar is within sizes[0] of it, straight across the plan. Asked of
// free-standing baths, of the others only when stated.
std::vector<Measurement> bathSteps(const CheckInput&);
// Shorter side of a bath that is stated to be for two, a length.
std::vector<Measurement> bathsForTwo(const CheckInput&);
// Centreline of each control of a bath, a length; the rim is the low limit, the rule's limit_high the high
// one.
std::vector<Measurement> bathControlHeights(const CheckInput&);

}  // namespace elbowroom::checks
