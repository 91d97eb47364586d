// Figures of the room as a whole: turning, dressing, ceiling. Lengths.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Diameter of the largest circle on the floor, knee and toe space counted; where it is short and the T-shaped
// space fits, the T's 60 in instead (either is enough).
std::vector<Measurement> turningSpace(const CheckInput&);
// The same, only for a plan that names a person with a wheelchair.
std::vector<Measurement> turningSpaceForChair(const CheckInput&);
// Diameter of the largest circle on the bare floor; the second not in a toilet compartment, where nobody dresses.
std::vector<Measurement> bareCircle(const CheckInput&);
std::vector<Measurement> dressingSpace(const CheckInput&);
// Stated ceiling height; unset when the plan does not state it.
std::vector<Measurement> ceilingHeight(const CheckInput&);

}  // namespace elbowroom::checks
