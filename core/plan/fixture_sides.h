// The four sides of a fixture's rectangle: where each runs, whether it stands at a wall, and what glass closes it.
#pragma once

#include <array>

#include "core/plan/layout.h"

namespace elbowroom {

struct FixtureSide {
  Side side = Side::front;
  Segment line;               // from its left to its right end as seen from outside
  Direction out;
  bool at_wall = false;       // a wall runs less than 1 in from it over some of its length: the finish fills the gap
  const Pane* pane = nullptr; // glass stated on it; points into the fixture

  bool open() const { return pane ? pane->door.has_value() : !at_wall; }  // one gets in or reaches in there
  bool screen() const { return pane && !pane->door; }                      // glass without a door
};
// Front, left, right, back.
std::array<FixtureSide, 4> sidesOf(const Layout&, const PlacedFixture&);

}  // namespace elbowroom
