#include "core/rules/checks/named.h"

#include <algorithm>

#include "core/rules/checks/access_room.h"
#include "core/rules/checks/access_showers.h"
#include "core/rules/checks/at_water.h"
#include "core/rules/checks/bath_bars.h"
#include "core/rules/checks/bath_space.h"
#include "core/rules/checks/baths.h"
#include "core/rules/checks/ca_electrical.h"
#include "core/rules/checks/clear_floor.h"
#include "core/rules/checks/curbless.h"
#include "core/rules/checks/door_over_floor.h"
#include "core/rules/checks/door_parts.h"
#include "core/rules/checks/doors.h"
#include "core/rules/checks/drainage.h"
#include "core/rules/checks/electrical.h"
#include "core/rules/checks/fans.h"
#include "core/rules/checks/floor.h"
#include "core/rules/checks/fronts.h"
#include "core/rules/checks/in_walls.h"
#include "core/rules/checks/grab_bars.h"
#include "core/rules/checks/manoeuvring.h"
#include "core/rules/checks/mirrors.h"
#include "core/rules/checks/headroom.h"
#include "core/rules/checks/hot_water.h"
#include "core/rules/checks/lights.h"
#include "core/rules/checks/manoeuvring.h"
#include "core/rules/checks/people.h"
#include "core/rules/checks/pockets.h"
#include "core/rules/checks/reach.h"
#include "core/rules/checks/room.h"
#include "core/rules/checks/routes.h"
#include "core/rules/checks/rooms.h"
#include "core/rules/checks/seated_reach.h"
#include "core/rules/checks/shower_doors.h"
#include "core/rules/checks/shower_up.h"
#include "core/rules/checks/showers.h"
#include "core/rules/checks/sides.h"
#include "core/rules/checks/sightline.h"
#include "core/rules/checks/spacing.h"
#include "core/rules/checks/stated.h"
#include "core/rules/checks/stated_figures.h"
#include "core/rules/checks/toilet_clearance.h"
#include "core/rules/checks/toilet_space.h"
#include "core/rules/checks/vanities.h"
#include "core/rules/checks/wall_items.h"
#include "core/rules/checks/wet.h"
#include "core/rules/checks/windows.h"
#include "core/rules/wishes/looks.h"

namespace elbowroom::checks {
namespace {

// {name, function, what it gives (a length if nothing stands there), unit of an amount, names of its sizes}
constexpr NamedMeasure kNamed[] = {
    // doors.h
    {"door-clear-openings", doorClearOpenings},
    {"door-swings", doorSwings, Gives::angle},
    {"door-pairs", doorPairs, Gives::yesNo},
    {"doors-and-people", doorsAndPeople, Gives::yesNo},
    {"doors-before-fixtures", doorsBeforeFixtures},
    {"pocket-walls", pocketWalls},
    {"slide-walls", slideWalls},
    {"pocket-pipes", pocketPipes, Gives::yesNo},
    {"doors-and-sitters", doorsAndSitters, Gives::yesNo},
    {"doors-and-pulls", doorsAndPulls},
    {"pull-travels", pullTravels},
    // floor.h
    {"own-floor", ownFloor, Gives::yesNo},
    // fronts.h
    {"toilet-fronts", toiletFronts},
    {"basin-fronts", basinFronts},
    {"bath-fronts", bathFronts},
    {"shower-fronts", showerFronts},
    {"toilet-wide-fronts", toiletWideFronts},
    // room.h
    {"turning-space", turningSpace},
    {"turning-space-for-chair", turningSpaceForChair},
    {"bare-circle", bareCircle},
    {"ceiling-height", ceilingHeight},
    {"heat-sources", heatSources, Gives::yesNo},
    {"dressing-space", dressingSpace},
    // showers.h
    {"shower-discs", showerDiscs, Gives::length, {}, "receptor's shorter side?, its longer side?"},
    {"shower-discs-or-large", showerDiscsOrLarge},
    {"shower-areas", showerAreas, Gives::area, {}, "receptor's shorter side?, its longer side?"},
    {"shower-outside-sides", showerOutsideSides},
    {"shower-outside-areas", showerOutsideAreas, Gives::area},
    // shower_up.h
    {"shower-discs-up", showerDiscsUp, Gives::length, {}, "height above the drain, side of a large one?"},
    {"shower-areas-up", showerAreasUp, Gives::area, {}, "height above the drain"},
    // sides.h
    {"toilet-sides", toiletSides},
    {"toilet-side-walls", toiletSideWalls},
    {"basin-sides", basinSides},
    {"basin-edges", basinEdges},
    // spacing.h
    {"fixture-centres", fixtureCentres},
    {"toilet-centres", toiletCentres},
    {"basin-spacing-15", basinSpacing15},
    {"basin-spacing-20", basinSpacing20},
    {"basin-gaps", basinGaps},
    // toilet_clearance.h
    {"toilet-clearances", toiletClearances, Gives::length, {},
     "depth, depth beside a basin?, basin from the centreline?, depth of the basin?"},
    // people.h
    {"knees-at-toilets", kneesAtToilets},
    {"elbows-at-toilets", elbowsAtToilets},
    {"bending-at-basins", bendingAtBasins},
    {"kneeling-at-baths", kneelingAtBaths},
    {"rims-of-baths", rimsOfBaths},
    {"passing-at-basins", passingAtBasins},
    {"helping-at-basins", helpingAtBasins},
    {"helper-beside-toilets", helperBesideToilets},
    {"basin-heights-for-adults", basinHeightsForAdults},
    {"basin-heights-for-children", basinHeightsForChildren},
    {"basin-heights-for-anybody", basinHeightsForAnybody},
    {"basin-heights-for-chairs", basinHeightsForChairs},
    {"top-shelves", topShelves},
    // manoeuvring.h
    {"door-manoeuvring", doorManoeuvring, Gives::length, {}, "depth of a push from the front"},
    {"door-nibs", doorNibs},
    // clear_floor.h
    {"basin-clear-floors", basinClearFloors, Gives::length, {}, "width?, depth of an alcove?, width in an alcove?, under a removable cabinet?, most under a basin?"},
    {"toilet-clear-floors", toiletClearFloors, Gives::length, {}, "width?, depth of an alcove?, width in an alcove?"},
    {"bath-clear-floors", bathClearFloors, Gives::length, {}, "width?, depth of an alcove?, width in an alcove?"},
    {"basin-alongside", basinAlongside, Gives::length, {},
     "width, width head on?, depth head on?, depth of an alcove?, width in an alcove?"},
    {"toilet-front-strips", toiletFrontStrips, Gives::length, {}, "to one side, to the other, anything: up to doors?, of a basin's front?, of one on the same wall?"},
    // door_over_floor.h
    {"doors-over-clear-floor", doorsOverClearFloor, Gives::yesNo, {}, "width beyond the swing?, length beyond it?"},
    // toilet_space.h
    {"toilet-spaces-either-side", toiletSpacesEitherSide, Gives::length, {},
     "depth, least to the nearer side, most to the nearer side, depth of what may reach in, width then"},
    {"toilet-near-sides", toiletNearSides},
    {"toilet-far-sides", toiletFarSides},
    {"toilet-grab-sides", toiletGrabSides},
    {"toilet-other-sides", toiletOtherSides},
    {"toilet-near-edges", toiletNearEdges},
    {"toilet-far-edges", toiletFarEdges, Gives::length, {}, "depth from the front"},
    {"toilet-projections", toiletProjections},
    {"toilet-circulation", toiletCirculation, Gives::length, {}, "width, by which a basin may reach in from the front"},
    {"compartment-widths", compartmentWidths},
    {"compartment-depths", compartmentDepths, Gives::length, {}, "depth with a toilet that hangs on the wall"},
    // bath_space.h
    {"bath-clearances", bathClearances, Gives::length, {}, "past a built-in seat, anything: without removable cabinets?"},
    {"bath-stretches", bathStretches, Gives::length, {}, "length from the control end"},
    {"bath-any-stretches", bathAnyStretches, Gives::length, {}, "length"},
    {"bath-either-way", bathEitherWay, Gives::length, {}, "depth head on, length that stays clear"},
    // access_showers.h
    {"transfer-sides", transferSides},
    {"roll-in-sizes", rollInSizes, Gives::length, {}, "length"},
    {"alternate-depths", alternateDepths},
    {"alternate-lengths", alternateLengths},
    {"shower-entries", showerEntries, Gives::length, {}, "width of a roll-in"},
    {"transfer-clearances", transferClearances, Gives::length, {}, "length from the control wall"},
    {"roll-in-clearances", rollInClearances},
    {"shower-short-sides", showerShortSides},
    {"sole-shower-sides", soleShowerSides},
    {"shower-floors-before", showerFloorsBefore, Gives::length, {}, "length from the control wall"},
    // access_room.h
    {"room-spans", roomSpans},
    {"room-lengths", roomLengths},
    {"circle-under-basins", circleUnderBasins, Gives::length, {}, "depth of knee space that counts, T across?, along?, its bar?, its base?, its chamfer?, T across?, along?, "
     "its bar?, its base?, its chamfer?, T across?, along?, its bar?, its base?, its chamfer?"},
    {"turning-rectangles", turningRectangles, Gives::yesNo, {}, "length, width"},
    {"basin-side-gaps", basinSideGaps},
    // stated.h
    {"basin-heights", basinHeights},
    {"toilet-seat-heights", toiletSeatHeights},
    {"shower-seat-heights", showerSeatHeights},
    {"basin-projections", basinProjections},
    {"knee-heights", kneeHeights},
    {"knee-depths", kneeDepths},
    {"toe-depths", toeDepths},
    {"pipes-covered", pipesCovered, Gives::yesNo},
    {"flush-on-open-side", flushOnOpenSide, Gives::yesNo},
    {"shower-curbs", showerCurbs},
    {"shower-water-limits", showerWaterLimits, Gives::amount, "\u00b0F"},
    {"door-thresholds", doorThresholds},
    {"door-handles", doorHandles},
    {"door-heights", doorHeights},
    {"doors-swing-out", doorsSwingOut, Gives::yesNo},
    {"doors-unlock", doorsUnlock, Gives::yesNo},
    {"smoke-alarms-from-doors", smokeAlarmsFromDoors},
    {"hot-on-the-left", hotOnTheLeft, Gives::yesNo},
    {"shower-seats-from-entry", showerSeatsFromEntry},
    {"shower-seats-from-wall", showerSeatsFromWall},
    {"floor-falls", floorFalls, Gives::amount, "%"},
    // wall_items.h
    {"towel-bar-heights", towelBarHeights},
    {"towel-falls", towelFalls},
    {"hook-heights", hookHeights},
    {"shower-head-heights", showerHeadHeights},
    {"shower-control-heights", showerControlHeights},
    {"side-light-heights", sideLightHeights},
    {"light-over-mirror-heights", lightOverMirrorHeights},
    {"niche-heights", nicheHeights},
    {"hoses", hoses},
    {"mirror-tops", mirrorTops},
    {"mirror-bottoms", mirrorBottoms},
    {"mirror-bottoms-for-chair", mirrorBottomsForChair},
    {"recess-depths", recessDepths},
    {"recess-bays", recessBays, Gives::yesNo},
    {"recesses-inside", recessesInside, Gives::yesNo},
    {"grab-bars-backed", grabBarsBacked, Gives::yesNo},
    {"holders-backed", holdersBacked, Gives::yesNo},
    {"water-frost", waterFrost, Gives::yesNo},
    {"items-apart", itemsApart, Gives::yesNo},
    {"items-within-walls", itemsWithinWalls, Gives::yesNo},
    {"items-off-openings", itemsOffOpenings, Gives::yesNo},
    // grab_bars.h
    {"toilet-side-bars", toiletSideBars, Gives::yesNo, {}, "farthest side wall"},
    {"toilet-rear-bars", toiletRearBars, Gives::yesNo},
    {"toilet-upright-bars", toiletUprightBars, Gives::yesNo, {}, "farthest side wall"},
    {"toilet-walls-backed", toiletWallsBacked, Gives::yesNo, {}, "farthest side wall"},
    {"bath-walls-backed", bathWallsBacked, Gives::yesNo},
    {"toilet-side-bar-starts", toiletSideBarStarts},
    {"toilet-side-bar-ends", toiletSideBarEnds},
    {"toilet-rear-bars-near", toiletRearBarsNear},
    {"toilet-rear-bars-far", toiletRearBarsFar, Gives::length, {}, "short wall?, far side on it?"},
    {"upright-bar-lengths", uprightBarLengths},
    {"upright-bar-bottoms", uprightBarBottoms},
    {"upright-bars-from-rear", uprightBarsFromRear},
    {"grab-bar-tops", grabBarTops},
    {"grab-bar-centres", grabBarCentres},
    {"grab-bar-gaps", grabBarGaps},
    {"grab-bar-diameters", grabBarDiameters},
    {"grab-bars-below-things", grabBarsBelowThings, Gives::length, {}, "below water fittings and bars?"},
    {"grab-bars-above-things", grabBarsAboveThings},
    {"fold-bar-lengths", foldBarLengths},
    {"fold-bars-from-centreline", foldBarsFromCentreline},
    {"fold-bar-sides", foldBarSides},
    {"fold-bars-above-seat", foldBarsAboveSeat},
    // bath_bars.h
    {"bath-back-bars", bathBackBars, Gives::count},
    {"bath-back-bar-lengths", bathBackBarLengths},
    {"bath-back-bars-from-head", bathBackBarsFromHead, Gives::length, {}, "beside a built-in seat?"},
    {"bath-back-bars-from-control", bathBackBarsFromControl},
    {"bath-lower-bars", bathLowerBars},
    {"bath-control-bars", bathControlBars},
    {"bath-head-bars", bathHeadBars},
    {"bath-control-places", bathControlPlaces, Gives::yesNo},
    {"bath-seat-heights", bathSeatHeights},
    {"bath-seat-depths", bathSeatDepths},
    {"bath-rims-free", bathRimsFree, Gives::yesNo},
    {"transfer-control-heights", transferControlHeights},
    {"roll-in-control-heights", rollInControlHeights},
    {"transfer-control-reaches", transferControlReaches},
    {"controls-from-seats", controlsFromSeats},
    {"transfer-back-bars", transferBackBars},
    {"roll-in-bars-from-walls", rollInBarsFromWalls},
    {"roll-in-walls-with-bars", rollInWallsWithBars, Gives::count},
    {"transfer-control-bars", transferControlBars, Gives::yesNo},
    // seated_reach.h
    {"mirror-bottoms-over-basins", mirrorBottomsOverBasins},
    {"mirror-bottoms-elsewhere", mirrorBottomsElsewhere},
    {"mirror-lower-edges", mirrorLowerEdges},
    {"mirror-upper-edges", mirrorUpperEdges},
    {"shelf-tops", shelfTops},
    {"operable-part-heights", operablePartHeights, Gives::length, {},
     "depth with knees, height beyond it, depth without, height beyond it"},
    {"reaches-across", reachesAcross, Gives::length, {}, "depth without knees"},
    {"reaches-over", reachesOver},
    {"protrusions", protrusions, Gives::length, {}, "lower edge above, lower edge up to"},
    // routes.h
    {"route-widths", routeWidths, Gives::length, {}, "width at a narrow place?, its length?"},
    // wet.h
    {"shower-openings", showerOpenings},
    {"seat-leaves-area", seatLeavesArea, Gives::area},
    {"seat-leaves-side", seatLeavesSide},
    {"wall-finishes", wallFinishes},
    {"wall-finishes-above-drain", wallFinishesAboveDrain},
    {"heads-away-from-entry", headsAwayFromEntry, Gives::yesNo},
    {"wall-finishes-above-head", wallFinishesAboveHead},
    // stated_figures.h
    {"curbs-above-drains", curbsAboveDrains},
    {"sides-above-curbs", sidesAboveCurbs},
    {"liners-up", linersUp},
    {"curbs-there", curbsThere, Gives::yesNo},
    {"shower-falls", showerFalls, Gives::amount, "%"},
    {"enclosure-glass", enclosureGlass, Gives::yesNo},
    {"shower-valves", showerValves, Gives::amount, "\u00b0F"},
    {"bath-valves", bathValves, Gives::amount, "\u00b0F"},
    {"fan-flows", fanFlows, Gives::amount, "cfm"},
    {"fans-outdoors", fansOutdoors, Gives::yesNo},
    {"fan-outlet-openings", fanOutletOpenings},
    {"fan-outlet-boundaries", fanOutletBoundaries},
    {"fan-outlet-intakes", fanOutletIntakes, Gives::length, "", "enough above it?"},
    {"standpipes", standpipes},
    {"washer-traps", washerTraps},
    {"heater-fuels", heaterFuels, Gives::yesNo},
    {"access-panels", accessPanels},
    {"pump-panels", pumpPanels},
    {"needed-fixtures", neededFixtures, Gives::yesNo},
    {"panels-there", panelsThere, Gives::yesNo},
    {"rough-ins", roughIns},
    {"shower-seat-depths", showerSeatDepths},
    // drainage.h
    {"trap-arms", trapArms, Gives::length, "",
     "drain, longest arm, drain?, longest arm?, drain?, longest arm?, drain?, longest arm?, drain?, longest arm?"},
    {"trap-arms-least", trapArmsLeast},
    {"trap-drops", trapDrops},
    {"trap-offsets", trapOffsets},
    {"drain-sizes", drainSizes, Gives::length, "", "toilet, basin?, bath?, washer?, shower?"},
    {"pipes-in-exterior-walls", pipesInExteriorWalls, Gives::yesNo},
    {"joist-notches", joistNotches},
    {"joist-end-notches", joistEndNotches},
    {"joist-notch-lengths", joistNotchLengths},
    {"joist-holes", joistHoles},
    {"joist-notch-places", joistNotchPlaces, Gives::yesNo},
    {"stud-hole-edges", studHoleEdges},
    {"cut-joists-solid", cutJoistsSolid, Gives::yesNo},
    {"stud-notches", studNotches},
    {"stud-holes", studHoles},
    // ca_electrical.h
    {"receptacles-far-from-water", receptaclesFarFromWater, Gives::length, "", "never nearer"},
    {"receptacle-at-any-basin", receptacleAtAnyBasin},
    {"receptacles-gfci-at-water", receptaclesGfciAtWater, Gives::yesNo, "", "within"},
    {"bowls-before-receptacles", bowlsBeforeReceptacles},
    {"switches-far-from-water", switchesFarFromWater, Gives::length, "", "on a GFCI"},
    // windows.h
    {"window-glass", windowGlass, Gives::area},
    {"window-opens", windowOpens, Gives::area},
    {"glass-near-water", glassNearWater, Gives::yesNo, "", "sill below, within"},
    {"glass-facing-water", glassFacingWater, Gives::yesNo, "", "sill below, within"},
    {"windows-free", windowsFree, Gives::yesNo},
    // headroom.h
    {"ceilings-over-showers", ceilingsOverShowers, Gives::length, "", "square"},
    {"ceilings-before-fixtures", ceilingsBeforeFixtures, Gives::length, "", "deep"},
    {"high-half", highHalf, Gives::area, "", "high, counted"},
    {"high-quarter", highQuarter, Gives::area, "", "high"},
    {"ceilings-over-fixtures", ceilingsOverFixtures},
    {"ceilings-before-and-in", ceilingsBeforeAndIn, Gives::length, "",
     "before a toilet or basin: deep, wide, at a bath or shower: deep, its width"},
    // rooms.h
    {"toilet-room-depths", toiletRoomDepths},
    {"door-leaves", doorLeaves},
    {"compartment-doors", compartmentDoors, Gives::yesNo},
    {"slip-resistant-floor", slipResistantFloor, Gives::yesNo},
    // sightline.h
    {"toilets-seen", toiletsSeen, Gives::amount, "%", "near, far"},
    // shower_doors.h
    {"shower-doors-outward", showerDoorsOutward, Gives::yesNo},
    {"shower-door-widths", showerDoorWidths},
    {"glass-door-swings", glassDoorSwings, Gives::angle},
    // door_parts.h
    {"deep-door-openings", deepDoorOpenings},
    {"door-undercuts", doorUndercuts},
    {"door-thresholds-for-chair", doorThresholdsForChair},
    {"doors-shut-tight", doorsShutTight, Gives::yesNo},
    {"stock-leaves", stockLeaves, Gives::yesNo},
    {"door-casings", doorCasings},
    // pockets.h
    {"pocket-boxes", pocketBoxes, Gives::yesNo},
    {"pocket-screws", pocketScrews},
    {"pocket-wall-thicknesses", pocketWallThicknesses},
    {"pocket-loads", pocketLoads, Gives::yesNo},
    // electrical.h
    {"basin-receptacles", basinReceptacles},
    {"basin-receptacle-walls", basinReceptacleWalls, Gives::yesNo},
    {"basin-receptacle-drops", basinReceptacleDrops},
    {"basin-receptacle-rises", basinReceptacleRises},
    {"basin-receptacles-across", basinReceptaclesAcross, Gives::yesNo},
    {"receptacles-off-water", receptaclesOffWater, Gives::length, "", "up to above the rim"},
    {"receptacles-off-water-above-rim", receptaclesOffWaterAboveRim, Gives::length, "", "up to above the rim"},
    {"receptacles-off-water-below-rim", receptaclesOffWaterBelowRim, Gives::length, "", "up to above the rim"},
    {"receptacles-not-over-water", receptaclesNotOverWater, Gives::yesNo},
    {"toilet-seat-receptacles", toiletSeatReceptacles, Gives::yesNo, "", "nearer than"},
    {"receptacles-at-toilets", receptaclesAtToilets},
    {"hanging-lights-off-water", hangingLightsOffWater, Gives::length, "", "up to above the rim"},
    {"lights-damp", lightsDamp, Gives::yesNo, "", "up to above the rim, nearer than?"},
    {"lights-wet", lightsWet, Gives::yesNo},
    {"switches-not-in-water", switchesNotInWater, Gives::yesNo},
    {"lights-switched", lightsSwitched, Gives::yesNo},
    {"receptacles-gfci", receptaclesGfci, Gives::yesNo},
    {"receptacles-gfci-near-water", receptaclesGfciNearWater, Gives::yesNo, "", "within"},
    {"receptacles-tamper-resistant", receptaclesTamperResistant, Gives::yesNo},
    {"receptacles-not-facing-up", receptaclesNotFacingUp, Gives::yesNo},
    {"receptacle-circuits", receptacleCircuits, Gives::amount, "A"},
    {"circuits-of-bathrooms", circuitsOfBathrooms, Gives::yesNo},
    {"panels-elsewhere", panelsElsewhere, Gives::yesNo},
    {"pump-circuits", pumpCircuits, Gives::yesNo},
    {"pumps-gfci", pumpsGfci, Gives::yesNo},
    {"pump-receptacles", pumpReceptacles},
    {"floor-heat-gfci", floorHeatGfci, Gives::yesNo},
    // fans.h
    {"room-air-by-floor", roomAirByFloor, Gives::amount, "cfm"},
    {"room-air-by-fixtures", roomAirByFixtures, Gives::amount, "cfm"},
    {"room-air-by-volume", roomAirByVolume, Gives::amount, "cfm", "ceiling higher than"},
    {"fan-run-ons", fanRunOns, Gives::amount, "min"},
    {"fan-loudness", fanLoudness, Gives::amount, "sones"},
    {"compartment-air", compartmentAir, Gives::yesNo},
    // baths.h
    {"bath-wall-gaps", bathWallGaps},
    {"bath-steps", bathSteps, Gives::yesNo, "", "bar within"},
    {"baths-for-two", bathsForTwo},
    {"bath-control-heights", bathControlHeights},
    // vanities.h
    {"double-vanity-widths", doubleVanityWidths},
    {"wall-per-basin", wallPerBasin},
    {"toe-space-depths", toeSpaceDepths},
    {"toe-space-heights", toeSpaceHeights},
    {"counter-corners", counterCorners, Gives::yesNo},
    // curbless.h
    {"curbless-drops", curblessDrops},
    {"centre-falls", centreFalls, Gives::amount, "%"},
    {"linear-drains", linearDrains, Gives::yesNo},
    {"falls-for-chair", fallsForChair, Gives::amount, "%"},
    {"curbless-lengths", curblessLengths},
    {"heads-from-open-side", headsFromOpenSide},
    {"glass-heights", glassHeights},
    {"fixed-glass-widths", fixedGlassWidths},
    {"open-wet-floors", openWetFloors},
    {"door-steps", doorSteps},
    // lights.h
    {"lights-at-fixtures", lightsAtFixtures, Gives::yesNo, "", "floor before it, half width"},
    {"lights-per-basin", lightsPerBasin, Gives::yesNo, "", "floor before it, half width"},
    {"switches-at-entry", switchesAtEntry, Gives::yesNo},
    {"daylight", daylight, Gives::area},
    {"side-light-spacings", sideLightSpacings},
    {"light-over-mirror-widths", lightOverMirrorWidths},
    // reach.h
    {"store-heights", storeHeights, Gives::length, "", "counter from, counter to, most over it"},
    {"switch-heights", switchHeights},
    {"grab-bar-heights", grabBarHeights},
    {"paper-holders-ahead", paperHoldersAhead},
    // hot_water.h
    {"hot-water-waits", hotWaterWaits, Gives::amount, "s"},
    // at_water.h
    {"controls-out-of-spray", controlsOutOfSpray, Gives::yesNo},
    {"controls-from-outside", controlsFromOutside},
    {"heads-over-tallest", headsOverTallest},
    {"hoses-reach-corners", hosesReachCorners},
    {"switches-out-of-reach", switchesOutOfReach},
    {"towels-at-showers", towelsAtShowers},
    {"towels-at-basins", towelsAtBasins},
    // in_walls.h
    {"recesses-off-pipes", recessesOffPipes, Gives::yesNo},
    {"recess-loads", recessLoads, Gives::yesNo},
    {"items-under-ceiling", itemsUnderCeiling},
    {"openings-under-ceiling", openingsUnderCeiling},
    {"receptacles-per-person", receptaclesPerPerson, Gives::count},
    {"paper-holder-heights", paperHolderHeights},
    {"grab-bar-plywood", grabBarPlywood},
    {"glass-hinges-backed", glassHingesBacked, Gives::yesNo},
    {"wall-hung-backed", wallHungBacked, Gives::yesNo},
    // mirrors.h
    {"mirror-holes-to-edge", mirrorHolesToEdge},
    {"mirror-holes-apart", mirrorHolesApart},
    {"mirrors-over-backsplash", mirrorsOverBacksplash},
    {"mirror-items-whole", mirrorItemsWhole, Gives::yesNo},
    {"makeup-mirror-eyes", makeupMirrorEyes},
    {"side-light-eyes", sideLightEyes},
    {"mirrors-for-children", mirrorsForChildren},
    // wishes/looks.h
    {"wish-control-away", wishes::wished<Wished::controlAway>, Gives::yesNo},
    {"wish-hand-spray", wishes::wished<Wished::handSpray>, Gives::yesNo},
    {"wish-niche", wishes::wished<Wished::niche>, Gives::yesNo},
    {"wish-glass-below-ceiling", wishes::wished<Wished::glassBelowCeiling>, Gives::yesNo},
    {"wish-curbless", wishes::wished<Wished::curbless>, Gives::yesNo},
    {"wish-bath-to-lean-over", wishes::wished<Wished::bathToLeanOver>, Gives::yesNo},
    {"wish-double-receptacles", wishes::wished<Wished::doubleReceptacles>, Gives::yesNo},
    {"wish-toe-space", wishes::wished<Wished::toeSpace>, Gives::yesNo},
    {"wish-full-mirror", wishes::wished<Wished::fullMirror>, Gives::yesNo},
    {"wish-side-lights", wishes::wished<Wished::sideLights>, Gives::yesNo},
    {"wish-makeup-mirror", wishes::wished<Wished::makeupMirror>, Gives::yesNo},
    {"wish-toilet-receptacle", wishes::wished<Wished::toiletReceptacle>, Gives::yesNo},
    {"wish-natural-light", wishes::wished<Wished::naturalLight>, Gives::yesNo},
    {"wish-backing", wishes::wished<Wished::backing>, Gives::yesNo},
    {"wish-sliding-door", wishes::wished<Wished::slidingDoor>, Gives::yesNo},
    {"wish-timer-switch", wishes::wished<Wished::timerSwitch>, Gives::yesNo},
    {"wish-wide-door", wishes::wished<Wished::wideDoor>, Gives::yesNo},
    {"wish-wheelchair-ready", wishes::wished<Wished::wheelchairReady>, Gives::yesNo},
};

}  // namespace

Gives kindOf(const Quantity& quantity) {
  static_assert(std::is_same_v<Quantity, std::variant<Length, Area, Angle, Count, bool, Amount>>);
  return static_cast<Gives>(quantity.index());
}

std::string_view wordsOf(Gives gives) {
  switch (gives) {
    case Gives::length:
      return "a length";
    case Gives::area:
      return "an area";
    case Gives::angle:
      return "an angle";
    case Gives::count:
      return "a count";
    case Gives::yesNo:
      return "a yes or no";
    case Gives::amount:
      return "an amount";
  }
  return {};
}

std::span<const NamedMeasure> namedMeasures() { return kNamed; }

const NamedMeasure* findMeasure(std::string_view name) {
  const auto at =
      std::find_if(std::begin(kNamed), std::end(kNamed), [&](const NamedMeasure& m) { return m.name == name; });
  return at == std::end(kNamed) ? nullptr : at;
}

const NamedMeasure* nameOf(Measure measure) {
  const auto at = std::find_if(std::begin(kNamed), std::end(kNamed),
                               [&](const NamedMeasure& m) { return m.measure == measure; });
  return at == std::end(kNamed) ? nullptr : at;
}

SizeCount sizesOf(const NamedMeasure& named) {
  if (named.sizes.empty()) return {};
  const auto count = [&](char c) {
    return static_cast<std::size_t>(std::count(named.sizes.begin(), named.sizes.end(), c));
  };
  const std::size_t most = count(',') + 1;
  return {most - count('?'), most};
}

}  // namespace elbowroom::checks
