#include <algorithm>
#include <numbers>

#include "core/geometry/rigid_search.h"

namespace elbowroom::floor_kernel {
namespace {

// The search for the nearest is good to 0.015 in; with this it keeps the 0.02 that is promised.
constexpr double kFreedFarther = 0.005;

// Accepted poses may overlap by up to kContact; most can be freed of it by a hair's motion.
Pose settled(const Surroundings& around, const RigidPattern& pattern, Pose pose, const Vec* target,
             bool turns) {
  if (!target && overlapAt(around, pattern, pose) <= 0) return pose;
  std::vector<std::uint32_t> near;
  const double reach = pattern.reach + 1;
  for (std::uint32_t i = 0; i < around.blockers.size(); ++i)
    if (around.blockers[i].distanceSquared(pose.at) <= reach * reach) near.push_back(i);
  const Pose to = stepped(around, pattern, near.data(), near.size(), pose, target, turns);
  const double farther = target ? norm(to.at - *target) - norm(pose.at - *target) : norm(to.at - pose.at);
  if (farther > (target ? kFreedFarther : 0.05) || overlapAt(around, pattern, to) > 1e-6) return pose;
  return liesClear(around, pattern, to, kContact.inches()) ? to : pose;
}

// Turns of the walls within a quarter, each once.
std::vector<double> wallTurns(const Kernel& kernel) {
  const double quarter = std::numbers::pi / 2;
  std::vector<double> turns{0};
  const Ring& room = kernel.rings[0];
  for (int i = room.first; i < room.last; ++i) {
    const Edge& e = kernel.edges[static_cast<std::size_t>(i)];
    if (e.inverse == 0 || 1 / e.inverse < 36) continue;
    double turn = std::fmod(std::atan2(e.d.y, e.d.x) + 2 * std::numbers::pi, quarter);
    if (turn > quarter - 1e-9) turn = 0;
    const bool known =
        std::any_of(turns.begin(), turns.end(), [&](double t) { return std::fabs(t - turn) < 1e-7; });
    if (!known && turns.size() < 6) turns.push_back(turn);
  }
  return turns;
}

}  // namespace

std::optional<Pose> nearestRigid(const Surroundings& around, const RigidPattern& pattern, Pose near,
                                 bool any_turn) {
  std::optional<Pose> found;
  for (const Grace grace : {kTrueFits, kForgiving}) {
    RigidSearch search(around, pattern, grace);
    found = any_turn ? search.nearest(near) : search.nearestAt(near);
    if (found) break;
  }
  if (!found) return found;
  return settled(around, pattern, *found, &near.at, false);
}

std::optional<Pose> anywhereRigid(const Surroundings& around, const RigidPattern& pattern) {
  if (!around.floor->has_floor) return std::nullopt;
  RigidSearch search(around, pattern);
  const double quarter = std::numbers::pi / 2;
  for (const double wall : wallTurns(*around.floor))
    for (double turn = wall; turn < pattern.period + wall - 1e-9; turn += quarter)
      if (const auto found = search.anywhereAt(turn)) return settled(around, pattern, *found, nullptr, false);
  const std::optional<Pose> turned = search.anywhere();
  if (!turned) return std::nullopt;
  return settled(around, pattern, *turned, nullptr, true);
}

std::optional<Placed> placedAs(const std::optional<Pose>& pose, std::optional<Angle> turn) {
  if (!pose) return std::nullopt;
  return Placed{toPoint(pose->at), turn ? *turn : Angle::fromRadians(pose->turn)};
}

}  // namespace elbowroom::floor_kernel
