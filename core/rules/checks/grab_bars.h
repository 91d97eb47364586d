// Grab bars: that they are there, where they begin and end, how they hang. L-shaped bars are taken by their
// arm along the wall and by their upright arm; fold-down ones only where a line says so. Lengths where
// nothing else is said; a bar that the plan does not have is not measured.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// Yes: a bar along the wall beside each toilet; along the wall behind it; an upright one beside it. A wall
// that is stated as backed answers yes too; without a bar the plan is asked for that. Side wall: the nearer
// one, at most sizes[0] from the centreline; without one nothing is measured.
std::vector<Measurement> toiletSideBars(const CheckInput&);
std::vector<Measurement> toiletRearBars(const CheckInput&);
std::vector<Measurement> toiletUprightBars(const CheckInput&);
// Yes: the walls behind and beside each toilet, the wall behind each bath are stated as backed.
std::vector<Measurement> toiletWallsBacked(const CheckInput&);
std::vector<Measurement> bathWallsBacked(const CheckInput&);

// The longest bar on a toilet's side wall: from the wall behind to where it begins, and to where it ends.
std::vector<Measurement> toiletSideBarStarts(const CheckInput&);
std::vector<Measurement> toiletSideBarEnds(const CheckInput&);
// The longest bar behind a toilet: how far it goes to the shorter side of the centreline, and to the longer
// one. On a wall shorter than sizes[0] the longer side needs sizes[1].
std::vector<Measurement> toiletRearBarsNear(const CheckInput&);
std::vector<Measurement> toiletRearBarsFar(const CheckInput&);
// Upright bars beside a toilet: length, lower end above the floor, middle from the wall behind it.
std::vector<Measurement> uprightBarLengths(const CheckInput&);
std::vector<Measurement> uprightBarBottoms(const CheckInput&);
std::vector<Measurement> uprightBarsFromRear(const CheckInput&);

// Bars along a wall: top above the floor (without the lower one behind a bath), middle above the floor.
std::vector<Measurement> grabBarTops(const CheckInput&);
std::vector<Measurement> grabBarCentres(const CheckInput&);
// Stated: gap to the wall, diameter.
std::vector<Measurement> grabBarGaps(const CheckInput&);
std::vector<Measurement> grabBarDiameters(const CheckInput&);
// Bars along a wall: to what projects from the wall above, and below or at the ends; only where something
// does. Water fittings and other bars above may be as near as sizes[0].
std::vector<Measurement> grabBarsBelowThings(const CheckInput&);
std::vector<Measurement> grabBarsAboveThings(const CheckInput&);

// Fold-down bars on the wall behind a toilet: length, middle to the centreline, centreline to what stands on
// that side, top above the seat.
std::vector<Measurement> foldBarLengths(const CheckInput&);
std::vector<Measurement> foldBarsFromCentreline(const CheckInput&);
std::vector<Measurement> foldBarSides(const CheckInput&);
std::vector<Measurement> foldBarsAboveSeat(const CheckInput&);

}  // namespace elbowroom::checks
