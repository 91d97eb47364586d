// Copy and paste: things as they stood when they were copied, and where they go when they are put down. Pure.
#pragma once

#include <span>

#include "core/plan/edit.h"
#include "core/plan/layout.h"

namespace elbowroom {

struct Copies {
  std::vector<PlacedFixture> fixtures;
  std::vector<Opening> openings;
  std::vector<WallItem> on_walls;
  std::vector<CeilingItem> on_ceiling;
  bool empty() const { return fixtures.empty() && openings.empty() && on_walls.empty() && on_ceiling.empty(); }
};
// Walls among the ids are left out.
Copies copiesOf(const Layout&, std::span<const ElementId>);

// The copies with fresh ids. Fixtures beside their originals, on the wall of that name when there is one.
// Doors and windows on `wall` when it is given, else on
// the wall of that name, else on the first one, as near to their own place as no other opening is; where the wall has
// no room left for one, it is not put down. Things on walls on `wall` when it is given, else on the wall of that name, else on the first one: in their
// own place while nothing is there, else beside it together, as the wall allows. Ceiling items a little
// aside. What named a copied shower names its copy; what names one that is not here names none.
PutThings putDown(const Copies&, const Layout& into, const ElementId& wall = {});

}  // namespace elbowroom
