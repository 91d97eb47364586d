// Searches that cost more than the rest of a check, each done once for the rules of all books.
#pragma once

#include <optional>

#include "core/geometry/routes.h"
#include "core/geometry/turning_shape.h"
#include "core/plan/mirror_order.h"
#include "core/rules/check_input.h"

namespace elbowroom::checks {

// A T-shaped turning space at any angle. With `knees`, one of its ends may lie over knee and toe space (2010
// ADA Standards 304.3.2). nullopt: there is none.
std::optional<PlacedTurning> sharedTurningT(const CheckInput&, const TurningShape&, bool knees);

// Widest ways across the floor from any place (core/geometry/widest_ways.h).
std::vector<Route> sharedWaysFrom(const CheckInput&, Point start, const std::vector<Point>& targets,
                                  Length than = {});

// mirrorOrders of the layout.
const std::vector<MirrorOrder>& sharedMirrorOrders(const CheckInput&);

// The way from the door to Layout::solid[which] as routeFigures gives it. Where a way of straight pieces is at
// least `enough` wide, that one, which is never wider than the widest; `straight` says so. nullopt without a
// door or a room. Precondition: that fixture is a goal (core/rules/straight_ways.h).
struct Way {
  Route route;
  bool straight = false;
};
std::optional<Way> sharedWay(const CheckInput&, std::size_t which, Length enough);

}  // namespace elbowroom::checks
