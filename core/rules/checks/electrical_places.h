// Where receptacles, basins' bowls and the water of baths and showers are: what the electrical measures and
// the zones drawn on the walls (core/works) both go by.
#pragma once

#include "core/geometry/reach.h"
#include "core/rules/checks/common.h"

namespace elbowroom::checks {

// What stands this close before a wall's face is at the wall.
inline constexpr Length kBeforeWall = Length::nanometres(50'800'000);  // 2 in

inline bool takesWater(const PlacedFixture& f) {
  return counts(f) && (isBath(f) || isShower(f)) && !f.footprint.empty();
}

// Receptacles that are on a wall and stay.
std::vector<const PlacedWallItem*> receptaclesOf(const Layout&);
// Centre of its box above the finished floor.
Length boxHeightOf(const PlacedWallItem&);

// A room with a basin and a toilet, bath or shower, or stated to be the compartment of one: what the
// electrical code calls a bathroom.
bool isBathroom(const Layout&);

// Height of a bath's rim or a shower's threshold above the floor; nullopt: not stated.
std::optional<Length> rimOf(const PlacedFixture&);
const char* rimFactOf(const PlacedFixture&);  // what the plan would have to state

// One basin of a fixture, as the strip of the bowl's width over the fixture's depth. Its width is stated
// (bowl_width), or the whole of a basin without a counter; in a counter it is at least 15 in, the smallest
// usual size, and at most its share of the counter. Empty: the number of basins is not stated.
struct Bowl {
  const PlacedFixture* fixture;
  Outline least, most;
};
std::vector<Bowl> bowlsOf(const PlacedFixture&);
// Whether the wall is the one behind the fixture or one that meets it at an end and faces the fixture.
bool isBesideBasin(const Layout&, const PlacedFixture&, int wall);

// Edges of a bath or shower that neither a wall nor fixed glass closes (all of them where there is no such
// glass), and that glass as far as it reaches above this height. Glass without a stated height closes; `asks`
// is set when there is such glass.
struct OpenEdges {
  std::vector<Segment> edges, glass;
  bool asks = false;
};
OpenEdges openEdgesOf(const Layout&, const PlacedFixture&, Length height);

// The width of a thing on a wall, on the plan.
inline Outline widthOf(const PlacedWallItem& i) { return {i.left, i.right}; }
// The nearest way from it to the water of a bath or shower that no wall or fixed glass cuts; nullopt: none. `asks`:
// there is glass whose height the plan does not state.
std::optional<Gap> wayToWater(const Layout&, const PlacedWallItem&, const PlacedFixture& water, bool& asks);

}  // namespace elbowroom::checks
