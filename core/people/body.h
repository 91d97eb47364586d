// Body sizes derived from a person's stature. Ratios: ANSUR II, comfort.md section 4 (grades there).
#pragma once

#include "core/plan/plan.h"

namespace elbowroom {

Length eyeHeight(const Person&);    // adults 0.935 S; children S - 4.3 in (derived estimate)
Length elbowHeight(const Person&);  // 0.617 S
// Floor a person takes standing at a basin: 18 in deep (washing hands), elbow to elbow wide.
Length standingDepth();  // 18 in, supplyht.com article 92491 via comfort.md 4d
Length standingWidth();  // 26.3 in, 95 % man, ANSUR II

}  // namespace elbowroom
