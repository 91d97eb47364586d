// One option's plan as a display list in plan lengths.
#pragma once

#include "core/drawing/display_list.h"
#include "core/rules/check.h"

namespace elbowroom {

// `mm`: the plan length that one millimetre of paper (or of screen) stands for; sizes text, ticks, offsets.
struct DrawStyle {
  Length mm;
  Unit unit = Unit::inches;
  bool labels = true;        // names in fixtures, door labels
  bool clear_zones = true;   // required clear floor in front of fixtures, thin dashed
  bool swings = true;
  int most_numbers = 0;      // of findings beside one mark, "…" for the rest; 0: all of them
};
// Walls, openings, fixtures as the trade draws them, labels. No dimensions.
DisplayList drawPlan(const Layout&, const DrawStyle&);
// The figure of one fixture alone (Tray pictures, drag ghosts).
DisplayList drawFixture(const PlacedFixture&, const DrawStyle&);
DisplayList drawOpening(const Layout&, const PlacedOpening&, const DrawStyle&);
// Clear zones that the chosen books ask for, from the report.
DisplayList drawClearZones(const Layout&, const Report&, const DrawStyle&);
// Hatches and marks of what is short, close or unknown, numbered in the report's order (1, 2, ...).
DisplayList drawFindings(const Report&, const DrawStyle&);
// Largest circle, T, or a rectangle as an outline of a movable thing with its figure.
DisplayList drawCircle(Circle, const std::string& label, const DrawStyle&);

// Dimension strings: each wall overall and per opening (both corners), fixture centrelines from the wall's
// ends, stacked outside the walls without overlap. Oblique ticks.
DisplayList drawDimensions(const Layout&, const DrawStyle&);
// One dimension: a-b measured along the segment, drawn `offset` to its left side.
DisplayList dimensionLine(Segment measured, Length offset, const std::string& text, const DrawStyle&);

}  // namespace elbowroom
