// Clear floor straight ahead of a fixture. All in lengths. A door counts as closed.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// From the foremost edge over the fixture's width to the wall or fixture opposite.
std::vector<Measurement> toiletFronts(const CheckInput&);
std::vector<Measurement> basinFronts(const CheckInput&);
// Over the clearest 30 in of the open side: the texts name a depth and no length, and a toilet beside the
// bath stands before part of it in every small room.
std::vector<Measurement> bathFronts(const CheckInput&);
// The same, its zones drawn up to another limit than the rule's.
std::vector<Measurement> bathFrontsFor(const CheckInput&, Length limit);
// Over the clearest 22 in of the front, the narrowest entry a shower may have.
std::vector<Measurement> showerFronts(const CheckInput&);
// The floor before each toilet, 30 in wide (15 in to either side of the centreline): its depth, or its width
// where that lacks less.
std::vector<Measurement> toiletWideFronts(const CheckInput&);

}  // namespace elbowroom::checks
