#include "core/rules/checks/shared_searches.h"

#include "core/geometry/widest_ways.h"
#include "core/rules/straight_ways.h"

namespace elbowroom::checks {

namespace {

std::vector<Route> widestToGoals(const CheckInput& in) {
  const Layout& layout = in.layout;
  const std::optional<RouteEnds> ends = routeEnds(layout);
  std::vector<std::size_t> goals;
  std::vector<Point> targets;
  for (std::size_t i = 0; i < layout.solid.size(); ++i) {
    if (!isGoal(layout.fixtures[static_cast<std::size_t>(layout.solid[i])].fixture.kind)) continue;
    goals.push_back(i);
    targets.push_back(ends->targets[i]);
  }
  const std::vector<Route> found = sharedWaysFrom(in, ends->start, targets);
  std::vector<Route> routes(layout.solid.size());
  for (std::size_t i = 0; i < goals.size(); ++i) routes[goals[i]] = found[i];
  return routes;
}

}  // namespace

std::vector<Route> sharedWaysFrom(const CheckInput& in, Point start, const std::vector<Point>& targets,
                                  Length than) {
  const Layout& layout = in.layout;
  return in.memo.once("ways", {}, [&] { return WidestWays(layout.floor); }).from(start, targets, than);
}

const std::vector<MirrorOrder>& sharedMirrorOrders(const CheckInput& in) {
  return in.memo.once("mirror orders", {}, [&] { return mirrorOrders(in.layout); });
}

std::optional<PlacedTurning> sharedTurningT(const CheckInput& in, const TurningShape& shape, bool knees) {
  knees = knees && in.layout.knee_space_counts;
  const std::vector<std::int64_t> key{shape.across.nm(),     shape.along.nm(),   shape.bar_width.nm(),
                                      shape.base_width.nm(), shape.chamfer.nm(), knees};
  return in.memo.once("turning T of a shape", key, [&]() -> std::optional<PlacedTurning> {
    if (in.layout.room.empty()) return std::nullopt;
    if (knees) return in.layout.floor.turningT(shape, in.layout.floor_with_knees);
    const std::optional<Placed> bare = in.layout.floor.turningT(shape);
    if (!bare) return std::nullopt;
    return PlacedTurning{*bare, TurningEnd::none};
  });
}

std::optional<Way> sharedWay(const CheckInput& in, std::size_t which, Length enough) {
  const std::vector<Route>& straight = in.memo.once(
      "straight ways", {}, [&] { return straightWays(in.layout, in.figures.turning.largest.center); });
  if (which >= straight.size()) return std::nullopt;
  if (straight[which].width >= enough) return Way{straight[which], true};
  const std::vector<Route>& widest = in.memo.once("widest ways", {}, [&] { return widestToGoals(in); });
  return Way{widest[which], false};
}

}  // namespace elbowroom::checks
