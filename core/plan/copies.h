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
// Doors, windows and things on walls on `wall` when it is given, else on the wall of that name, else on the
// first one: openings as near to their own place as no other opening is; things on walls in their own place
// where nothing hangs and no opening is, else beside it together, else in the nearest place that has room.
// Where the wall has none they are not put down. Ceiling items a little aside. What named a copied shower
// names its copy; what names one that is not here names none.
PutThings putDown(const Copies&, const Layout& into, const ElementId& wall = {});

}  // namespace elbowroom
