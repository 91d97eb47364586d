// Areas, distances and containment of plain outlines. All exact up to the final rounding to a nanometre
// (areas: a square micrometre); no polygon overlay is involved except in freeArea/freeRegions.
// Solids and rooms are simple rings in either orientation; empty rings are at distance 0 and overlap nothing.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/point.h"

namespace elbowroom {

// Two things closer than this touch: they are flush, not short of room.
inline constexpr Length kContact = Length::nanometres(396'875);  // 1/64 in

// Unsigned area (shoelace, exact). Zero for fewer than three points.
Area areaOf(const Outline& ring);
// Signed: positive when the ring runs counter-clockwise.
Area signedAreaOf(const Outline& ring);
Box boundsOf(const Outline& ring);  // precondition: not empty
Box boundsOf(const std::vector<Outline>& rings);
Point centroidOf(const Outline& ring);  // precondition: non-zero area
// On the boundary counts as inside.
bool contains(const Outline& ring, Point p);
// First pair of non-adjacent edges that cross or touch, as the place; nullopt for a simple ring.
// A ring of zero area, with a repeated point or with an edge folded back on the one before is not simple
// either.
std::optional<Point> selfCrossing(const Outline& ring);

struct Gap {
  Length distance;  // 0 when they touch or overlap
  Point from, to;   // nearest points (any one pair)
  bool overlap = false;  // the interiors share more than contact (deeper than kContact)
};
// Clearance between two solid outlines, with the nearest points; when they touch or overlap, both are one
// place they share. Overlap: a boundary point of one lies deeper than kContact inside the other, or they
// coincide.
Gap gapBetween(const Outline& a, const Outline& b);
// Where they overlap (gapBetween(a, b).from), nullopt when they do not: quicker where only that is asked.
std::optional<Point> overlapOf(const Outline& a, const Outline& b);
// Clearance from a solid outline to the boundary of the room it stands in. Overlap: it reaches deeper than
// kContact through a wall or lies outside the room altogether; the distance is then 0.
Gap gapToBoundary(const Outline& thing, const Outline& room);
// Overlap: the point lies deeper than kContact inside the solid.
Gap gapFromPoint(Point p, const Outline& solid);
Gap gapBetween(Segment a, Segment b);

// How far one can go straight from the segment `front` in direction `ahead` before something stands in the
// strip as wide as the segment. Obstacles that only touch the strip's sides (kContact) do not count; what
// lies behind the front does not count, up to kContact ahead of it; what stands across the front gives 0.
// `hit` is the index into obstacles (before the wall on a tie), -1 for the room's boundary. With neither a
// room nor anything ahead the distance is 0: unknown floor is not clear floor.
struct Ahead {
  Length distance;
  Point at;        // where it is hit
  int hit = -1;
};
// A solid outline, which must outlive this, and the box round it: worked out once for many questions.
struct BoxedOutline {
  const Outline* outline = nullptr;
  Box box;
  BoxedOutline(const Outline& ring) : outline(&ring), box(ring.empty() ? Box{} : boundsOf(ring)) {}
  BoxedOutline(const Outline& ring, Box round) : outline(&ring), box(round) {}
};
Ahead clearAhead(Segment front, Direction ahead, const Outline& room,
                 const std::vector<BoxedOutline>& obstacles);
// Without and with the obstacles, for little more than the work of one.
struct AheadBoth {
  Ahead room, all;
};
AheadBoth clearAheadBoth(Segment front, Direction ahead, const Outline& room,
                         const std::vector<BoxedOutline>& obstacles);

// Floor of the room not covered by any obstacle (polyclipping on a 1/65536 in grid; error < 0.01 sq in).
Area freeArea(const Outline& room, const std::vector<Outline>& obstacles);
// The same floor as outlines for drawing, slivers under 0.001 sq in left out: outer rings counter-clockwise,
// holes clockwise.
std::vector<Outline> freeRegions(const Outline& room, const std::vector<Outline>& obstacles);
// Area common to two outlines, for instance how much of a swing lies over a fixture.
Area commonArea(const Outline& a, const Outline& b);

// A circular arc or sector as a polyline for drawing only: `steps` chords, first and last point exact.
Outline arcPoints(Point center, Length radius, Direction from, Angle sweep, int steps = 32);

}  // namespace elbowroom
