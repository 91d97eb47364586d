// How far it is from each fixture to whatever stands beside and before it: computed once for all books.
#pragma once

#include <vector>

#include "core/plan/layout.h"

namespace elbowroom::checks {

// Straight out until a wall or a solid fixture is met; Ahead::hit is an index into Layout::fixtures, -1 a
// wall.
struct Around {
  Ahead left,
      right;    // from the centreline, over the whole front-to-back extent; left as seen facing the wall
  Ahead front;  // from the foremost edge over the fixture's width
};

// Fixtures to be removed get an empty answer and stand in nobody's way.
std::vector<Around> aroundOf(const Layout&);

// Solid outlines, those that `keep` accepts; `fixture` gives the index into Layout::fixtures of each.
struct Obstacles {
  std::vector<BoxedOutline> outlines;  // of the layout, which must outlive this
  std::vector<int> fixture;
};
template <typename Keep>
Obstacles obstaclesWhere(const Layout& layout, Keep keep) {
  Obstacles found;
  found.outlines.reserve(layout.solid.size());
  found.fixture.reserve(layout.solid.size());
  for (std::size_t i = 0; i < layout.solid.size(); ++i) {
    if (!keep(layout.fixtures[static_cast<std::size_t>(layout.solid[i])])) continue;
    found.outlines.emplace_back(layout.solid_outlines[i], layout.solid_boxes[i]);
    found.fixture.push_back(layout.solid[i]);
  }
  return found;
}
// clearAhead over these obstacles, with `hit` translated to an index into Layout::fixtures.
Ahead aheadOf(Segment front, Direction ahead, const Layout& layout, const Obstacles& obstacles);
// The same to the walls alone and over these obstacles.
AheadBoth aheadOfBoth(Segment front, Direction ahead, const Layout& layout, const Obstacles& obstacles);

// Directions to the left and right of a fixture as seen by a person who faces the wall behind it.
inline Direction leftOf(const PlacedFixture& f) { return f.facing.right(); }
inline Direction rightOf(const PlacedFixture& f) { return f.facing.left(); }
inline Segment centreline(const PlacedFixture& f) { return {f.back_center, f.front_center}; }

}  // namespace elbowroom::checks
