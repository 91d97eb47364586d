// What hands have to reach on the walls. Lengths above the finished floor unless a line says otherwise.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Top of each shelf, lower edge of each medicine cabinet. High limit over a basin that is sizes[0] to
// sizes[1] deep: sizes[2].
std::vector<Measurement> storeHeights(const CheckInput&);
// Centrelines of switches.
std::vector<Measurement> switchHeights(const CheckInput&);
// Top of each level grab bar.
std::vector<Measurement> grabBarHeights(const CheckInput&);
// From the front of the nearest toilet to the centre of each paper holder, along the toilet.
std::vector<Measurement> paperHoldersAhead(const CheckInput&);

}  // namespace elbowroom::checks
