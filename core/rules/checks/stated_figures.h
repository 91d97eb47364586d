// Figures that a plan states as facts of its elements and that rules hold against a limit as they stand. What
// the plan does not state is asked for ("unknown"), except where the header says that only a stated figure
// counts.
#pragma once

#include "core/rules/rule.h"

namespace elbowroom::checks {

// ---- showers; those without a curb are left out of the two about curbs
// Top of the curb above the drain, a length.
std::vector<Measurement> curbsAboveDrains(const CheckInput&);
// How far the sides and the back of the receptor rise above the curb, a length; only stated figures.
std::vector<Measurement> sidesAboveCurbs(const CheckInput&);
// How far the liner is turned up above the finished threshold, a length; only stated figures.
std::vector<Measurement> linersUp(const CheckInput&);
// Yes: the shower has a curb.
std::vector<Measurement> curbsThere(const CheckInput&);
// Fall of the floor, an amount in per cent.
std::vector<Measurement> showerFalls(const CheckInput&);
// Yes: the glass of the enclosure is safety glass. Showers with glass.
std::vector<Measurement> enclosureGlass(const CheckInput&);

// ---- water: temperature limit of the valve, an amount in degrees Fahrenheit
std::vector<Measurement> showerValves(const CheckInput&);  // showers, and baths with a shower head
std::vector<Measurement> bathValves(const CheckInput&);    // the other baths

// ---- fans and their outlets
// Air flow, an amount in cfm. Limit: the rule's, or 20 cfm for a fan that runs all the time (IRC M1507.4);
// how it runs is only asked where that decides.
std::vector<Measurement> fanFlows(const CheckInput&);
// Yes: the duct ends outdoors.
std::vector<Measurement> fansOutdoors(const CheckInput&);
// Distance of the outlet to a window, door or gravity intake, to the property line, to a mechanical intake;
// lengths, only stated figures. The last one is met too when the outlet is at least `sizes[0]` above the
// intake.
std::vector<Measurement> fanOutletOpenings(const CheckInput&);
std::vector<Measurement> fanOutletBoundaries(const CheckInput&);
std::vector<Measurement> fanOutletIntakes(const CheckInput&);

// ---- others
// Washer's standpipe above its trap weir, and that trap above the floor; lengths, only stated figures.
std::vector<Measurement> standpipes(const CheckInput&);
std::vector<Measurement> washerTraps(const CheckInput&);
// Yes: the heater burns no fuel, or draws and sends its air through a sealed duct.
std::vector<Measurement> heaterFuels(const CheckInput&);
// Smaller side of the access panel of a bath or shower, a length; only stated figures.
std::vector<Measurement> accessPanels(const CheckInput&);
// The same of every bath with a pump, asked for.
std::vector<Measurement> pumpPanels(const CheckInput&);
// Yes: the equipment of a bath or shower has an access panel: stated with a size (0: none), or on the wall it
// stands at.
std::vector<Measurement> panelsThere(const CheckInput&);
// Rough-in of each toilet, a length.
std::vector<Measurement> roughIns(const CheckInput&);
// Depth of the seat in each shower, a length; only stated figures.
std::vector<Measurement> showerSeatDepths(const CheckInput&);
// Yes: where the plan's room is the only bathroom of the dwelling, it has a toilet, a basin and a bath or
// shower.
std::vector<Measurement> neededFixtures(const CheckInput&);

}  // namespace elbowroom::checks
