// What lies under a point of the plan. Pure.
#pragma once

#include <optional>

#include "core/rules/check.h"

namespace elbowroom::ui {

struct Hit {
  enum class Kind { none, turner, corner, ceilingItem, fixture, opening, wall };
  Kind kind = Kind::none;
  ElementId id;       // corner: the wall whose left end it is
};
// Corners win over things on the ceiling, these over fixtures, fixtures (the smallest first) over openings
// over walls. `reach` is the picking distance in plan lengths. Corners are only offered when `corners` is
// set.
Hit hitAt(const Layout&, Point, Length reach, bool corners);
// The finding whose place is nearest to the point within reach, preferring marks and lines; -1 for none.
int findingAt(const Report&, Point, Length reach);
// Everything whose outline lies wholly within the box.
std::vector<ElementId> elementsWithin(const Layout&, const Box&);
// Walls, openings, fixtures, things on the ceiling: the order in which Tab walks them.
std::vector<ElementId> elementsInOrder(const Option&);
// Where the handle stands that turns a free-standing fixture: before its front, `off` away.
std::optional<Point> turnerOf(const Layout&, const ElementId&, Length off);
// The outline to light up for an element; empty when it has none.
Outline outlineOf(const Layout&, const ElementId&);

}  // namespace elbowroom::ui
