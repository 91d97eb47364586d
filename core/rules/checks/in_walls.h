// What a wall allows where something is set into it or hung on it: pipes, load, the ceiling above; and how many
// things of a kind there are where they are used.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: no pipes run in the wall that a niche or cabinet is set into.
std::vector<Measurement> recessesOffPipes(const CheckInput&);
// Yes: the wall carries no load. Niches and cabinets that cut a stud; asked of the wall.
std::vector<Measurement> recessLoads(const CheckInput&);
// Upper edge of things on walls, at most the ceiling over them (the lower end under a slope): of each that is too
// high, and on each wall of the one that comes nearest. Asked once where the ceiling's height is not stated.
std::vector<Measurement> itemsUnderCeiling(const CheckInput&);
// Head of each door and window whose height is stated, at most the ceiling over it (the lower end under a slope).
// Only where the ceiling's height is stated.
std::vector<Measurement> openingsUnderCeiling(const CheckInput&);
// Receptacles within 36 in of a basin for two, at least one for each of its basins; a count.
std::vector<Measurement> receptaclesPerPerson(const CheckInput&);
// Centre of each paper holder above the floor.
std::vector<Measurement> paperHolderHeights(const CheckInput&);
// Plywood behind each grab bar, a length; walls that are stated to be backed all over, and bars that have no blocking
// of their own. Asked of the wall.
std::vector<Measurement> grabBarPlywood(const CheckInput&);
// Yes: blocking is behind each basin, vanity and bench that hangs on the wall (asked of it), or the wall behind each
// heater is backed.
std::vector<Measurement> wallHungBacked(const CheckInput&);
// Yes: solid wood is in the wall where a glass door hangs (fact hinge_backing). One per door that hangs on a wall.
std::vector<Measurement> glassHingesBacked(const CheckInput&);

}  // namespace elbowroom::checks
