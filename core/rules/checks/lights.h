// Light: where one washes, sits and bathes; from a window.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: there is a lamp at each basin, toilet, bath and shower. One counts when it hangs over the fixture or
// over the floor before it (sizes[0] deep), within the fixture's width, at least sizes[1] to either side of
// its centreline. Not known where the plan has no lamp at all.
std::vector<Measurement> lightsAtFixtures(const CheckInput&);
// Yes: each basin of a fixture with several has a lamp: its own one within sizes[1] to either side (or its share of the
// width) and over it or the floor sizes[0] before it, or one that reaches over the middles of several. Not known where
// the plan has no lamp at all.
std::vector<Measurement> lightsPerBasin(const CheckInput&);
// Yes: a wall switch at the entry controls a light (room's fact switch_at_entry).
std::vector<Measurement> switchesAtEntry(const CheckInput&);
// Glass of all windows together, an area; what is not stated is taken as large as the opening. Only with a
// window and without a light tube.
std::vector<Measurement> daylight(const CheckInput&);
// Between the centres of neighbouring side lights of one wall, a length.
std::vector<Measurement> sideLightSpacings(const CheckInput&);
// Width of each light that is wider than high and over a mirror, a length.
std::vector<Measurement> lightOverMirrorWidths(const CheckInput&);

}  // namespace elbowroom::checks
