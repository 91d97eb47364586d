// Doors by themselves: sizes, gaps, locks and what the wall around them needs.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Clear opening of every door in a wall thicker than 24 in, a length.
std::vector<Measurement> deepDoorOpenings(const CheckInput&);
// Gap under each door with a leaf, a length (fact undercut); only with a fan, whose air it lets in.
std::vector<Measurement> doorUndercuts(const CheckInput&);
// Threshold of each door, a length (fact threshold); only for a plan that names a wheelchair user.
std::vector<Measurement> doorThresholdsForChair(const CheckInput&);
// Yes: it shuts tight; a leaf that slides before the wall leaves a gap, a cased opening has none. One per door.
std::vector<Measurement> doorsShutTight(const CheckInput&);
// Yes: the leaf, or each of two, has a width that is in stock.
std::vector<Measurement> stockLeaves(const CheckInput&);
// Free wall beside each door at its narrower side, a length; not for sliding leaves, which are wider.
std::vector<Measurement> doorCasings(const CheckInput&);

}  // namespace elbowroom::checks
