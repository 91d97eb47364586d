// The wheelchair clearance about a toilet (2010 ADA Standards 604.3). A length.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Width from the side wall over a depth of sizes[0] from the rear wall, or, where the space is wide enough, its
// depth (limit sizes[0]). Only the toilet may stand within; where sizes[1] is given (dwellings) also a basin with
// knee space on the rear wall, sizes[2] or more from the centreline to its edge and (ICC A117.1) at most sizes[3]
// deep, when the space is sizes[1] deep (604.3.2 exception).
std::vector<Measurement> toiletClearances(const CheckInput&);

}  // namespace elbowroom::checks
