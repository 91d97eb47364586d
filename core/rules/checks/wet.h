// The inside of a shower or of a bath with a shower head: its entry, seat, wall finish, head.
#pragma once

#include "core/rules/checks/common.h"

namespace elbowroom::checks {

// Whether one showers there: a shower, or a bath that a shower head on a wall or over it belongs to.
bool takesShowers(const Layout&, const PlacedFixture&);
// Where its shower head is, on the plan: named by the item, else the ceiling's head over its footprint;
// nullopt when none is placed. `facing`: unset for a head on the ceiling, which sprays down.
struct HeadPlace {
  ElementId id;
  Point at;
  std::optional<Direction> facing;
};
std::optional<HeadPlace> headOf(const Layout&, const PlacedFixture&);
// The sides of a shower that are open or have a door, with the width one walks through there. A side along a
// wall is closed; without any glass stated one enters by the front.
struct Entry {
  Segment line;
  Direction outward;
  Length width;
};
std::vector<Entry> entriesOf(const Layout&, const PlacedFixture&);

// Widest entry of each shower, a length.
std::vector<Measurement> showerOpenings(const CheckInput&);
// Floor left beside a built-in seat of a rectangular shower: area, and narrowest side as a length. Only
// showers with a stated seat. The plan does not say along which side the seat runs: not known where that
// decides. A seat that folds up takes nothing. Where 1300 sq in are left the side's limit is 25 in (IRC
// P2708.1 exception 2).
std::vector<Measurement> seatLeavesArea(const CheckInput&);
std::vector<Measurement> seatLeavesSide(const CheckInput&);
// Height of the waterproof wall finish above the floor, and above the drain of a shower; lengths.
std::vector<Measurement> wallFinishes(const CheckInput&);
std::vector<Measurement> wallFinishesAboveDrain(const CheckInput&);
// How far it rises above the middle of the shower head on the wall, a length.
std::vector<Measurement> wallFinishesAboveHead(const CheckInput&);
// Yes: the head does not spray at an entry. Showers; asked where no head is placed.
std::vector<Measurement> headsAwayFromEntry(const CheckInput&);

}  // namespace elbowroom::checks
