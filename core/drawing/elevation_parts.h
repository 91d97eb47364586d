// Parts of the elevation, one per file. All in the elevation's figures: x along the walls, y above the
// finished floor, both in inches; `x` is where the wall's left end stands.
#pragma once

#include "core/drawing/clutter.h"
#include "core/drawing/draw_elevation.h"
#include "core/drawing/pen.h"
#include "core/plan/ceiling.h"

namespace elbowroom {

inline LocalFrame elevationFrame() { return {{}, {1, 0}, {0, 1}}; }

// The ceiling over one wall, left to right; level at 8 ft when the plan does not state it.
struct CeilingLine {
  std::vector<CeilingPoint> points;
  bool stated = true;
  Length highest() const;
};
CeilingLine ceilingLineOf(const Layout&, std::size_t wall);
double heightAt(const CeilingLine&, double along);

void drawOpeningFront(Pen&, const Opening&, double x);
// The trim round an opening, as a fitter's usual 2 1/4 in (no source); not for windows flush in tile. Under a
// slope it ends where the wall does.
void drawCasing(Pen&, const Opening&, const CeilingLine&, double x);

// A fixture as seen from the room: its front on the wall it stands at, its side on a wall it touches; an
// empty list when it shows on neither.
DisplayList drawFixtureOnWall(const Layout&, const PlacedFixture&, std::size_t wall, double x);

// The line symbol of a thing on a wall, within its rectangle and touching all four of its sides.
void drawWallSymbol(Pen&, const WallItem&, const Box& rectangle, const DrawStyle&);

// The pocket that a leaf slides into, dashed behind the finish; nothing for other doors.
void drawPocket(Pen&, const PlacedOpening&, const WallFrame&, double x);

// Layers. Everything of a wall has the wall as its source.
DisplayList drawStuds(const Layout&, std::size_t wall, double x);
DisplayList labelBays(const Layout&, std::size_t wall, double x, Clutter& taken, const DrawStyle&);
// `taken` is what the texts keep clear of, and takes them in.
DisplayList labelPeopleLines(const Layout&, std::size_t wall, double x, Clutter& taken, const DrawStyle&);
DisplayList drawPeopleLines(const Layout&, std::size_t wall, double x, const DrawStyle&);

// What a height is measured to, as is the trade's custom: the middle of boxes and bars, the lower and upper
// edge of mirrors, niches and cabinets, the top of shelves.
struct HeightMark {
  Length at;         // above the finished floor
  std::string what;  // "ctr", "top", "bottom"
};
std::vector<HeightMark> heightMarks(const PlacedWallItem&);

// The strip's figures: heights beside the things, distances below the floor.
DisplayList drawStripDimensions(const Layout&, std::size_t wall, double x, Clutter& taken, const LabelRound&,
                                const DrawStyle&);
// The elevation's strings, outside the wall on all four sides.
DisplayList drawElevationDimensions(const Layout&, std::size_t wall, const DrawStyle&);

}  // namespace elbowroom
