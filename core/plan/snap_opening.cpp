#include "core/plan/snap_along.h"

namespace elbowroom {

std::optional<SnappedAlong> snapOpening(const Layout& layout, const Opening& moving, Point wanted,
                                        const SnapRules& rules) {
  std::optional<SnappedAlong> best;
  Length least;
  for (std::size_t i = 0; i < layout.walls.size(); ++i) {
    const WallFrame& wall = layout.walls[i];
    snap_parts::AlongProblem problem;
    problem.wall_length = wall.length;
    problem.half = moving.width / 2;
    for (const Opening& other : layout.option.openings) {
      if (other.id == moving.id || other.wall != wall.id) continue;
      problem.blocked.push_back({other.along - other.width / 2, other.along + other.width / 2, other.id});
      problem.neighbours.push_back(problem.blocked.back());
    }
    problem.centres.push_back({wall.length / 2, SnapReason::wallCentre, wall.id, {}});
    for (const PlacedFixture& other : layout.fixtures)
      if (other.wall == static_cast<int>(i) && other.fixture.status != Status::remove)
        problem.centres.push_back({dot(other.back_center - wall.from, wall.along), SnapReason::alignedCentre,
                                   other.fixture.id, other.center});
    const Length s = dot(wanted - wall.from, wall.along);
    const std::optional<Length> nearest = snap_parts::nearestAllowed(problem, s);
    if (!nearest) continue;
    const Length off = distance(wall.at(*nearest), wanted);
    if (best && (off > least || (off == least && wall.id != moving.wall))) continue;
    const auto answer = snap_parts::settle(problem, s, rules);
    least = off;
    best = SnappedAlong{wall.id, answer->along, answer->reason};
    // Pushed aside by another opening, not by the end of the wall.
    if (answer->reason == SnapReason::corner && answer->along != problem.half &&
        answer->along != wall.length - problem.half)
      best->reason = SnapReason::neighbour;
  }
  return best;
}

}  // namespace elbowroom
