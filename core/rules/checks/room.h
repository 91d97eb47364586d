// Figures of the room as a whole: turning, dressing, ceiling. Lengths.
#pragma once

#include "core/geometry/turning_shape.h"
#include "core/rules/rule.h"

namespace elbowroom::checks {

// Where a T of this shape fits; the search is left out where a smaller figure says that there is none.
std::optional<PlacedTurning> turningTIn(const CheckInput&, const TurningShape&, bool knees);
// Where a T of this shape fits, its bar from end to end becomes the measured figure, and the limit too but
// for the T of 2010, which rules ask for as 60 in. With `knees`, one of its ends may lie over knee and toe
// space.
bool turnByT(const CheckInput&, const TurningShape&, bool knees, Measurement&);

// Diameter of the largest circle on the floor, knee and toe space counted; where it is short and the T-shaped
// space fits, the T's 60 in instead (either is enough); where that does not fit either, the circle that
// reaches between the jambs of a door that swings out, if it is enough.
std::vector<Measurement> turningSpace(const CheckInput&);
// The same, only for a plan that names a person with a wheelchair.
std::vector<Measurement> turningSpaceForChair(const CheckInput&);
// Diameter of the largest circle on the bare floor; the second not in a toilet compartment, where nobody dresses.
std::vector<Measurement> bareCircle(const CheckInput&);
std::vector<Measurement> dressingSpace(const CheckInput&);
// Yes: there is a heater, a radiator, a towel heater or a heated floor; asked (floor_heat) where the plan shows none.
std::vector<Measurement> heatSources(const CheckInput&);
// Stated ceiling height; unset when the plan does not state it.
std::vector<Measurement> ceilingHeight(const CheckInput&);

}  // namespace elbowroom::checks
