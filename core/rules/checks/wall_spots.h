// Things on walls as seen from the fixture that they serve: how far out from the wall behind it, how far to
// its left.
#pragma once

#include "core/rules/checks/common.h"

namespace elbowroom::checks {


struct Spot {
  enum class On {
    rear,
    left,
    right,
    other
  };  // of the walls round the fixture, as seen facing the one behind it
  On on = On::other;
  Length out_from, out_to;    // from the face of the wall behind the fixture (its back, when it stands free)
  Length left_from, left_to;  // from its centreline; negative to the right
  Length out() const { return (out_from + out_to) / 2; }
  Length left() const { return (left_from + left_to) / 2; }
};
Spot spotOf(const Layout&, const PlacedFixture&, const PlacedWallItem&);

// The wall to that side of a fixture when its face is at most `within` from the centreline.
struct SideWall {
  const WallFrame* wall = nullptr;
  Hand hand = Hand::left;
  Length distance;
};
std::optional<SideWall> wallBeside(const Layout&, const PlacedFixture&, Hand, Length within);
// The nearer one of both.
std::optional<SideWall> nearerWall(const Layout&, const PlacedFixture&, Length within);

// What stands on the floor under a thing on the wall and against the same wall; the deepest one, or nullptr.
const PlacedFixture* standingUnder(const Layout&, const PlacedWallItem&);
// How far a fixture's front is from the face of the wall behind it.
Length reachFromWall(const Layout&, const PlacedFixture&);

}  // namespace elbowroom::checks
