// Hinged glass doors of showers: which way they open, what they sweep.
#pragma once

#include "core/geometry/sweep.h"
#include "core/rules/rule.h"

namespace elbowroom::checks {

// The leaves of a shower's hinged glass doors that open outward. The plan does not say where in its side a door
// hangs: it is taken at the end of its hinge side, both as seen from outside the shower. Doors whose hinge or
// swing is not stated slide or are not known; they have no leaf.
std::vector<Leaf> glassLeaves(const PlacedFixture&);

// Yes: every hinged door opens outward. One per shower that has a hinged door; asked where a hinge side is stated
// without a swing. A door that slides is left out.
std::vector<Measurement> showerDoorsOutward(const CheckInput&);
// Width of each glass door, a length.
std::vector<Measurement> showerDoorWidths(const CheckInput&);
// How far each outward leaf opens before it meets a fixture or a wall, an angle; limit: its full swing.
std::vector<Measurement> glassDoorSwings(const CheckInput&);

}  // namespace elbowroom::checks
