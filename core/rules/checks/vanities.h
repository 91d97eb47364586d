// Vanities and the wall they stand at.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Width of each vanity that is stated to have two basins or more, a length; the limit is for two.
std::vector<Measurement> doubleVanityWidths(const CheckInput&);
// Wall at each basin or vanity between what stands to its left and right, divided by its basins, a length.
std::vector<Measurement> wallPerBasin(const CheckInput&);
// Depth and height of the toe space of a vanity that stands on the floor, lengths.
std::vector<Measurement> toeSpaceDepths(const CheckInput&);
std::vector<Measurement> toeSpaceHeights(const CheckInput&);
// Yes: the corners of a vanity's counter are rounded or clipped. Vanities that stand free at a side.
std::vector<Measurement> counterCorners(const CheckInput&);

}  // namespace elbowroom::checks
