// The wheelchair clearance about a toilet (2010 ADA Standards 604.3). A length.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Width from the side wall over a depth of 56 in from the rear wall, or, where the space is wide enough, its
// depth (limit 56 in). Only the toilet may stand within; in a home also a basin with knee space on the rear
// wall, 18 in or more from the centreline, when the space is 66 in deep (604.3.2 exception).
std::vector<Measurement> toiletClearances(const CheckInput&);

}  // namespace elbowroom::checks
