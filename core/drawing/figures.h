// Parts of drawPlan, one per file.
#pragma once

#include "core/drawing/draw_plan.h"
#include "core/drawing/pen.h"

namespace elbowroom {

// Cut walls with the openings and pockets left out, exterior lines and plumbing marks.
DisplayList drawWalls(const Layout&, const DrawStyle&);
// A thing on the ceiling, dashed, and what it is called.
DisplayList drawCeilingItem(const PlacedCeilingItem&);
std::string ceilingLabel(const PlacedCeilingItem&);
// What a door's label says, one string per line: leaf and action, clear opening.
std::vector<std::string> doorLabel(const Layout&, const PlacedOpening&, const DrawStyle&);
std::vector<std::string> fixtureLabel(const PlacedFixture&);
// Labels of fixtures, openings and things on the ceiling, placed where they cross least of `drawn`. Brief:
// openings by their id alone.
DisplayList drawLabels(const Layout&, const DisplayList& drawn, const DrawStyle&, bool brief = false);
// "Wall n" inside each wall, as the elevations call it.
DisplayList drawWallNames(const Layout&, const DisplayList& drawn, const DrawStyle&);

// Extent of an outline in a wall's frame: s along from the left end, t from the inside face outwards
// (inches).
struct WallRange {
  double s0 = 0, s1 = 0, t0 = 0, t1 = 0;
};
WallRange rangeOn(const WallFrame&, const Outline&);
LocalFrame frameOf(const WallFrame&);  // x along, y outwards

}  // namespace elbowroom
