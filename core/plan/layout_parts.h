// Private to core/plan: the pieces from which deriveLayout is put together.
#pragma once

#include "core/plan/layout.h"

namespace elbowroom::layout_parts {

std::vector<WallFrame> wallFrames(const Option& option);
PlacedFixture placeFixture(const Option& option, const Fixture& fixture);
// Precondition: `walls` are the option's frames.
PlacedOpening placeOpening(const Option& option, const std::vector<WallFrame>& walls, const Opening& opening);

// Precondition: `walls` are the option's frames.
PlacedWallItem placeWallItem(const std::vector<WallFrame>& walls, const WallItem& item);
PlacedCeilingItem placeCeilingItem(const CeilingItem& item);

// The fixture's own frame: u to the right of a person facing it, v from its back to its front.
struct FixtureFrame {
  int wall = -1;
  Point back_center;
  Direction facing;
  Point at(Length u, Length v) const { return back_center + u * facing.left() + v * facing; }
};
FixtureFrame frameOf(const Option& option, const Fixture& fixture);
// Outline in (u, v), running so that it comes out counter-clockwise on the plan.
Outline outlineInFrame(const Fixture& fixture);

// Leaf, stop and gap sizes where the plan does not say (comfort table of doors: 1 3/8 leaf, 7/16 stop).
Length leafThickness(const Opening& opening);
// Wall beside the opening that a parked leaf needs: pocket W + 1 in, surface sliding the leaf W; else 0.
Length parkingLength(const Opening& opening);

// Free wall from the opening's jamb on that side to the corner or to the next opening of the same wall.
struct WallBeside {
  Length length;
  ElementId limit;          // the opening, or the wall round the corner
  bool corner = true;
};
WallBeside wallBeside(const Option& option, const Opening& opening, Hand side);
// The side a pocket or sliding leaf goes to: as stated, else where there is more free wall.
Hand parkingSide(const Option& option, const Opening& opening);

}  // namespace elbowroom::layout_parts
