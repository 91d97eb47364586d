// What goes into the wall, drawn on it: backing and the zones of wiring. In the elevation's figures.
#pragma once

#include "core/drawing/clutter.h"
#include "core/drawing/draw_elevation.h"
#include "core/works/backing.h"
#include "core/works/electrical_zones.h"

namespace elbowroom {

// Hatched, below everything else; bars that may come later only outlined.
DisplayList drawBackingOn(const WallFrame&, const std::vector<BackingZone>&, double x, const DrawStyle&);
// "B3": number in the order of backingZones, as the schedule has it; else what it is for.
DisplayList labelBackingOn(const WallFrame&, const std::vector<BackingZone>&, double x, bool numbered,
                           Clutter& taken, const LabelRound&, const DrawStyle&);
DisplayList drawElectricalOn(const WallFrame&, const std::vector<ElectricalZone>&, double x,
                             const DrawStyle&);
DisplayList labelElectricalOn(const WallFrame&, const std::vector<ElectricalZone>&, double x, Clutter& taken,
                              const LabelRound&, const DrawStyle&);

// "grab bar", "mirror": what the backing is for.
std::string_view wordsOf(BackingFor);

}  // namespace elbowroom
