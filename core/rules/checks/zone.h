// A rectangle of floor that a text asks for before a wall, a door or a fixture, and how much of it is there.
#pragma once

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

struct Zone {
  Point at;                  // on the line where the rectangle begins, at the edge of free floor
  Direction left, out;       // left as seen by somebody who faces that line
  Length to_left, to_right;  // how far the rectangle reaches to both sides of `at`
  Length deep;               // and away from the line
  // Sides whose spare counts toward "close"; a bath between two walls has none to spare by nature.
  bool spare_left = false, spare_right = false;
  Point corner(Length to_left_of_it, Length away) const { return at + to_left_of_it * left + away * out; }
  Outline outline() const;
};

// About a fixture in the corner of the wall behind it and the nearer side wall.
Zone cornerZone(const CheckInput&, const PlacedFixture&, Length wide, Length deep);

struct Room {
  Ahead left, right;  // from the line through `at`, over the depth (or what the room has of it)
  Ahead deep;         // from the beginning, over the width (or what the room has of it)
  Length side_lacks, deep_lacks;
  Length lacks() const;  // the smaller one that is missing; 0 when all of the rectangle is there
};
Room roomFor(const Layout&, const Obstacles&, const Zone&);

// What does not change when the rectangle slides along its line.
struct RoomBeside {
  AheadBoth left, right;  // over the depth (or what the room has of it)
};
RoomBeside roomBeside(const Layout&, const Obstacles&, const Zone&);
Room roomFor(const Layout&, const Obstacles&, const Zone&, const RoomBeside&);

// The figure that decides: what lacks less when something stands in the rectangle, what has less to spare when
// all of it is there. Its own limit, places (the missing strip too) and what stands in the way as second subject.
Measurement measuredIn(const Layout&, const Zone&, const Room&, const ElementId& subject);

// Outlines that block the floor where knee and toe space counts, of the fixtures that `keep` accepts.
template <typename Keep>
Obstacles blocksWhere(const Layout& layout, Keep keep) {
  Obstacles found;
  for (const int i : layout.solid) {
    const PlacedFixture& f = layout.fixtures[static_cast<std::size_t>(i)];
    if (f.floor_block.empty() || !keep(f)) continue;
    found.outlines.emplace_back(f.floor_block);
    found.fixture.push_back(i);
  }
  return found;
}
// How far knee and toe space lets the clear floor reach in under the front (2010 ADA Standards 306).
Length countedUnder(const PlacedFixture&);
// The footprint less the strip of this depth at its front.
Outline behindFront(const PlacedFixture&, Length strip);
// A parameter of the asking rule (Rule::sizes); 0 when it has none there.
Length sizeOf(const CheckInput&, std::size_t index);

}  // namespace elbowroom::checks
