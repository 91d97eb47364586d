// Waste pipes as far as a plan states them, pipes in walls, and what is cut from the wood around them.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Pipe from the trap to the vent, a length. sizes: pairs of drain size and longest arm, ascending; the
// largest drain size that is not above the stated one gives the limit. Asked about, except where every size
// answers alike. Toilets are left out (they empty their trap themselves).
std::vector<Measurement> trapArms(const CheckInput&);
// The same pipe; limit: twice the drain size. Only where both are stated.
std::vector<Measurement> trapArmsLeast(const CheckInput&);
// Fixture outlet to trap weir, down and across; lengths, only stated figures.
std::vector<Measurement> trapDrops(const CheckInput&);
std::vector<Measurement> trapOffsets(const CheckInput&);
// Drain size, a length, asked about. sizes: least size of toilets, basins, baths, washers, showers; 0 or
// missing: that kind is not measured. A bidet is left out.
std::vector<Measurement> drainSizes(const CheckInput&);
// Yes: the pipes of an exterior wall are protected from frost. Walls that carry pipes, or the head, control,
// hand spray or spout of a shower or bath.
std::vector<Measurement> pipesInExteriorWalls(const CheckInput&);

// Cuts in solid joists under a toilet, bath or shower; lengths, only where cut and joist are stated. Limits:
// a sixth of the joist's depth deep, a third long, a quarter deep at its end; a bored hole a third and 2 in of wood above and below it.
std::vector<Measurement> joistNotches(const CheckInput&);
std::vector<Measurement> joistEndNotches(const CheckInput&);
std::vector<Measurement> joistNotchLengths(const CheckInput&);
std::vector<Measurement> joistHoles(const CheckInput&);
// Yes: the notch is not in the middle third of the span (fact joist_notch_middle); where a notch is stated.
std::vector<Measurement> joistNotchPlaces(const CheckInput&);
// Yes: those joists are solid wood. Only where a cut is stated; what kind they are is asked for (fact
// joist_kind), and what is said to be made (I-joists, trusses, glued or laminated) has none of the limits
// above.
std::vector<Measurement> cutJoistsSolid(const CheckInput&);
// Cuts in studs, per wall; lengths, only where cut and stud are stated. Limits: notch a quarter of the stud
// in a bearing or exterior wall, 40 % in another; hole 40 % and 60 %. Whether a wall inside bears is asked
// where that decides.
std::vector<Measurement> studNotches(const CheckInput&);
std::vector<Measurement> studHoles(const CheckInput&);
// Wood between that hole and the edge of its stud, a length; where a hole is stated.
std::vector<Measurement> studHoleEdges(const CheckInput&);

}  // namespace elbowroom::checks
