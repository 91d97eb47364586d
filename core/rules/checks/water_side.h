// On which side of a shower or bath its water is worked, and where its seat is.
#pragma once

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

// Where the plan puts the fixture's control, spout or head, as seen facing the wall behind the fixture; a shower
// whose seat side is stated has its control opposite. nullopt: the plan does not say, or it is in the middle.
std::optional<Hand> controlSide(const Layout&, const PlacedFixture&);
// Whether the plan has a control, spout or head of the fixture on a wall.
bool controlPlaced(const Layout&, const PlacedFixture&);
// The stated side of a shower's seat; "back" is neither.
std::optional<Hand> seatSide(const PlacedFixture&);

// How a wheelchair enters a shower: the widest way in through its front or a side with room before it (wet.h has the
// entries one can walk through).
struct WayIn {
  Side side = Side::front;
  Length width;  // 0 when glass closes every side
};
WayIn wayInto(const Layout&, const PlacedFixture& shower);

// 2010 ADA Standards 608.2 knows three kinds. A shower is taken for the one it can be meant for: with a longer side
// under 48 in a transfer shower, else by its entry, over 48 in wide for the standard roll-in kind.
enum class ShowerKind { transfer, rollIn, alternate };
ShowerKind kindOf(const Layout&, const PlacedFixture& shower);

}  // namespace elbowroom::checks
