// Figures of the room for wheelchairs. Lengths where nothing else is said.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Least distance between a wall and what wall stands across from it.
std::vector<Measurement> roomSpans(const CheckInput&);
// The largest such distance.
std::vector<Measurement> roomLengths(const CheckInput&);
// Diameter of the largest circle where it may run under basins with knee space by at most sizes[0] (and no
// deeper than that space). Where it is short, each further five sizes are a T-shaped space on the bare floor
// that is as good: across, along, width of its bar, of its base, chamfer of its inner corners.
std::vector<Measurement> circleUnderBasins(const CheckInput&);
// Yes: a rectangle of sizes[0] by sizes[1] is free somewhere, at any angle.
std::vector<Measurement> turningRectangles(const CheckInput&);
// Edge of each basin to the wall or fixture beside it, the nearer one.
std::vector<Measurement> basinSideGaps(const CheckInput&);

}  // namespace elbowroom::checks
