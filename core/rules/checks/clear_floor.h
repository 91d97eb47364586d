// Clear floor spaces before fixtures: where a wheelchair stands to use them. All in lengths; a door counts as
// closed.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Depth of free floor straight ahead over a width of sizes[0], at the best place along the front where the
// centreline lies within that width; the floor under a front counts as far as knee and toe space do. Where the
// room is narrower, its width, with that limit. Sizes: none for a square; width; then, if alcoves count, how deep a forward alcove
// may be before it asks for a wider space, and that width (24 in and 36 in in 2010 ADA Standards 305.7.1); then
// how much counts under a vanity whose cabinet can be taken out (fact cabinet_removable), and at most how much under any.
std::vector<Measurement> basinClearFloors(const CheckInput&);
std::vector<Measurement> toiletClearFloors(const CheckInput&);
std::vector<Measurement> bathClearFloors(const CheckInput&);
// The same before a basin alongside: width sizes[0] centred on it, from its front edge, with 305.7.2 for alcoves
// in sizes[3] and sizes[4]; or, where that is short and it has knee space, head on: sizes[1] wide and sizes[2]
// deep, if those are given.
std::vector<Measurement> basinAlongside(const CheckInput&);
// Ahead of the foremost edge of each toilet, over sizes[0] to one side of the centreline and sizes[1] to the
// other, whichever way round is deeper. With a third size: only up to the sweep of doors that swing in. Basins may
// reach in with sizes[3] of their front, those on the toilet's wall with sizes[4].
std::vector<Measurement> toiletFrontStrips(const CheckInput&);

}  // namespace elbowroom::checks
