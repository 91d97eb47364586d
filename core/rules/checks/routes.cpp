#include "core/rules/checks/routes.h"

#include <algorithm>

#include "core/geometry/confinement.h"
#include "core/geometry/routes.h"
#include "core/rules/check.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/shared_searches.h"
#include "core/rules/checks/zone.h"
#include "core/rules/straight_ways.h"

namespace elbowroom::checks {

namespace {
using namespace literals;

// A straight way is good enough when it is clear by more than the usual tolerance of a site.
constexpr Length kSurely = 1_in;
// Ways whose narrowest places are this near pass the same one.
constexpr Length kSamePlace = 1_in;
const Length kJust = 0.1_in;

// The narrow stretch about a place: its two ends on the way, and how long it is.
struct Throat {
  Point one, other;
  Length length;
};
Throat throatOf(const Layout& layout, const Route& route, Length limit) {
  const Direction across = Direction::between(route.sides.a, route.sides.b);
  const auto reach = [&](Direction along) {
    const ApproachSpace space{route.narrowest, along, route.width - 2 * kContact, 1_in};
    return confinementOf(layout.floor, space, limit - space.width).depth;
  };
  const Length ahead = reach(across.right()), back = reach(across.left());
  return {route.narrowest + (ahead + kJust) * across.right(),
          route.narrowest + (back + kJust) * across.left(), ahead + back};
}

// Is the way as wide as the limit before and behind its narrow place?
bool wideBut(const Layout& layout, const Throat& throat, Point target, Length limit) {
  const std::optional<RouteEnds> ends = routeEnds(layout);
  const auto width = [&](Point from, Point to) {
    return widestRoutes(layout.room, layout.solid_outlines, from, {to})[0].width;
  };
  const auto through = [&](Point first, Point then) {
    return width(ends->start, first) > limit - kMetTolerance && width(then, target) > limit - kMetTolerance;
  };
  return through(throat.one, throat.other) || through(throat.other, throat.one);
}

// What stands at both sides of a narrow place.
void addSides(const Layout& layout, const Route& route, std::vector<ElementId>& subjects) {
  for (const Point side : {route.sides.a, route.sides.b}) {
    ElementId id = wallAt(layout, side);
    for (const int i : layout.solid) {
      const PlacedFixture& f = layout.fixtures[static_cast<std::size_t>(i)];
      if (gapFromPoint(side, f.footprint).distance < kContact) id = f.fixture.id;
    }
    if (std::find(subjects.begin(), subjects.end(), id) == subjects.end()) subjects.push_back(id);
  }
}

}  // namespace

std::vector<Measurement> routeWidths(const CheckInput& in) {
  std::vector<Measurement> found;
  std::vector<Point> places;
  const Length limit = limitOf(in), least = sizeOf(in, 0);
  for (std::size_t k = 0; k < in.layout.solid.size(); ++k) {
    const PlacedFixture& f = in.layout.fixtures[static_cast<std::size_t>(in.layout.solid[k])];
    if (!isGoal(f.fixture.kind)) continue;
    const std::optional<Way> way = sharedWay(in, k, limit + kSurely);
    if (!way) continue;
    const Route& route = way->route;
    Measurement m{.subjects = {f.fixture.id}, .measured = route.width};
    if (!route.reachable) {
      m.places = {pointAt(f.front_center)};
      found.push_back(std::move(m));
      continue;
    }
    m.places = {lineFrom(route.sides.a, route.sides.b)};
    if (way->straight) {
      m.detail = "way-at-least";
      found.push_back(std::move(m));
      continue;
    }
    const auto same = std::find_if(places.begin(), places.end(),
                                   [&](Point p) { return distance(p, route.narrowest) < kSamePlace; });
    if (same != places.end()) continue;
    places.push_back(route.narrowest);
    if (least > Length{} && route.width <= limit - kMetTolerance && route.width > least - kMetTolerance) {
      const Throat throat = throatOf(in.layout, route, limit);
      if (throat.length < sizeOf(in, 1) + kMetTolerance &&
          wideBut(in.layout, throat, f.front_center + 15_in * f.facing, limit)) {
        m.limit = least;
        m.detail = "way-narrow-once";
      }
    }
    addSides(in.layout, route, m.subjects);
    found.push_back(std::move(m));
  }
  return found;
}

}  // namespace elbowroom::checks
