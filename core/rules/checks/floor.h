// Whether each thing has its floor to itself.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: no two fixtures share floor and none reaches into a wall, deeper than kContact. One answer per clash
// (a pair, or a fixture alone for a wall); a single clear one without subjects when there is none.
std::vector<Measurement> ownFloor(const CheckInput&);

}  // namespace elbowroom::checks
