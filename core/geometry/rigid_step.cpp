#include <algorithm>
#include <array>

#include "core/geometry/rigid_search.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr int kRounds = 6, kPasses = 20, kMost = 24;
constexpr double kTurnWeight = 12;  // inches of motion that weigh as much as a radian of turn

struct Row {
  double x, y, t;  // change of the gap with motion and weighted turn
  double lack;     // gap that must be won
  double inverse;  // 1 / squared length
  double force = 0;
};

}  // namespace

Pose stepped(const Surroundings& around, const RigidPattern& pattern, const std::uint32_t* list,
             std::size_t count, Pose pose, const Vec* target, bool turns) {
  std::array<Row, kMost> rows;
  for (int round = 0; round < kRounds; ++round) {
    const Axes axes(pose.turn);
    const Vec wanted = target ? *target - pose.at : Vec{};
    const double look = std::min(norm(wanted), 6.0) + 2;
    int n = 0;
    double worst = 0;
    for (std::size_t i = 0; i < count; ++i) {
      const Blocker& edge = around.blockers[list[i]];
      for (const Piece& piece : pattern.pieces) {
        if (!(piece.layers & edge.layer)) continue;
        Contact found[2];
        const int k = contactsOf(edge, piece, axes, pose.at, found);
        if (found[0].gap > look) continue;
        worst = std::min(worst, found[0].gap);
        for (int j = 0; j < k; ++j) {
          const Contact& c = found[j];
          if (c.gap > look) continue;
          const double t = turns ? c.lever / kTurnWeight : 0;
          const Row row{c.away.x, c.away.y, t, -c.gap, 1 / (dot(c.away, c.away) + t * t)};
          if (n < kMost) {
            rows[n++] = row;
          } else {
            const auto slackest = std::min_element(
                rows.begin(), rows.end(), [](const Row& a, const Row& b) { return a.lack < b.lack; });
            if (row.lack > slackest->lack) *slackest = row;
          }
        }
      }
    }
    if (!target && worst > -1e-7) return pose;
    // Hildreth's passes: the point nearest to the wanted one within all half spaces.
    double x = wanted.x, y = wanted.y, t = 0;
    for (int pass = 0; pass < kPasses; ++pass) {
      double moved = 0;
      for (int i = 0; i < n; ++i) {
        Row& r = rows[i];
        const double lack = r.lack - (r.x * x + r.y * y + r.t * t);
        const double change = std::max(-r.force, lack * r.inverse);
        if (change == 0) continue;
        r.force += change;
        x += change * r.x, y += change * r.y, t += change * r.t;
        moved = std::max(moved, std::fabs(change));
      }
      if (moved < 1e-8) break;
    }
    const double turn = t / kTurnWeight;
    // Tangents hold for small turns only.
    const double cut = std::fabs(turn) > 0.15 ? 0.15 / std::fabs(turn) : 1;
    pose.at = pose.at + Vec{cut * x, cut * y};
    pose.turn += cut * turn;
    if (cut == 1 && x * x + y * y < 1e-14 && std::fabs(turn) < 1e-9) break;
    if (!target && round == 2 && worst < -3) break;
  }
  return pose;
}

}  // namespace elbowroom::floor_kernel
