#include "core/rules/checks/routes.h"

#include <algorithm>
#include <utility>

#include "core/geometry/confinement.h"
#include "core/rules/check.h"
#include "core/rules/checks/common.h"
#include "core/rules/checks/shared_searches.h"
#include "core/rules/checks/zone.h"
#include "core/rules/straight_ways.h"
#include "core/rules/text.h"

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

// Goals whose widest ways pass the same narrow place, and the measurements of these ways.
struct Narrow {
  Route route;
  std::vector<Point> targets;
  std::vector<std::size_t> of;
};

// The place may be as narrow as `least` where it is short and the way is as wide as the limit before and behind.
void allowOnce(const CheckInput& in, Point start, const Narrow& narrow, Length limit, Length least,
               Length most_long, std::vector<Measurement>& found) {
  if (narrow.route.width > limit - kMetTolerance || narrow.route.width <= least - kMetTolerance) return;
  const Throat throat = throatOf(in.layout, narrow.route, limit);
  if (throat.length >= most_long + kMetTolerance) return;
  const Length than = limit - kMetTolerance;
  const auto wide = [&](const Route& r) { return r.width > than; };
  const std::vector<Route> to_it = sharedWaysFrom(in, start, {throat.one, throat.other}, than);
  for (const auto& [before, behind] : {std::pair{to_it[0], throat.other}, {to_it[1], throat.one}}) {
    if (!wide(before)) continue;
    const std::vector<Route> on = sharedWaysFrom(in, behind, narrow.targets, than);
    for (std::size_t i = 0; i < narrow.of.size(); ++i) {
      if (!wide(on[i])) continue;
      found[narrow.of[i]].limit = least;
      found[narrow.of[i]].detail = "way-narrow-once";
    }
  }
}

// What stands at both sides of a narrow place, in words.
std::string between(const Layout& layout, const Route& route) {
  std::vector<std::string> names;
  for (const Point side : {route.sides.a, route.sides.b}) {
    ElementId id = wallAt(layout, side);
    for (const int i : layout.solid) {
      const PlacedFixture& f = layout.fixtures[static_cast<std::size_t>(i)];
      if (gapFromPoint(side, f.footprint).distance < kContact) id = f.fixture.id;
    }
    names.push_back(subjectName(layout.option, id));
  }
  return names[0] + " and " + names[1];
}

std::vector<Measurement> widthsOf(const CheckInput& in, Length limit, Length least, Length most_long) {
  std::vector<Measurement> found;
  std::vector<Narrow> narrows;
  const std::optional<RouteEnds> ends = routeEnds(in.layout);
  if (!ends) return found;
  for (std::size_t k = 0; k < in.layout.solid.size(); ++k) {
    const PlacedFixture& f = in.layout.fixtures[static_cast<std::size_t>(in.layout.solid[k])];
    if (!isGoal(f.fixture.kind)) continue;
    const std::optional<Way> way = sharedWay(in, k, limit + kSurely);
    if (!way) continue;
    const Route& route = way->route;
    Measurement m{.subjects = {f.fixture.id}, .measured = route.width};
    if (!route.reachable) {
      m.places = {pointAt(f.front_center)};
    } else if (m.places = {lineFrom(route.sides.a, route.sides.b)}; way->straight) {
      m.detail = "way-at-least";
    } else {
      m.detail = "way-between:" + between(in.layout, route);
      auto same = std::find_if(narrows.begin(), narrows.end(), [&](const Narrow& n) {
        return distance(n.route.narrowest, route.narrowest) < kSamePlace;
      });
      if (same == narrows.end()) same = narrows.insert(narrows.end(), {route, {}, {}});
      same->targets.push_back(ends->targets[k]);
      same->of.push_back(found.size());
    }
    found.push_back(std::move(m));
  }
  if (least > Length{})
    for (const Narrow& n : narrows) allowOnce(in, ends->start, n, limit, least, most_long, found);
  return found;
}

}  // namespace

std::vector<Measurement> routeWidths(const CheckInput& in) {
  const Length limit = limitOf(in), least = sizeOf(in, 0), most_long = sizeOf(in, 1);
  return in.memo.once("route widths", {limit.nm(), least.nm(), most_long.nm()},
                      [&] { return widthsOf(in, limit, least, most_long); });
}

}  // namespace elbowroom::checks
