// Private to core/geometry: whether and where a pattern fits among edges, at given turns or at any.
//
// Branch and bound over boxes of poses (place and turn). A box is dropped when one point of an edge lies in
// the pattern at every pose of the box; since a point that lies in a half plane turned by -s and by +s lies
// in it, moved in by a factor cos(s), at every turn between, whole stretches of turns go at once. A pose is
// accepted when nothing reaches deeper than kContact into the pattern. What reaches in by no more than 0.010
// in is never dropped, so "nowhere" is a proof up to that. Newton-like steps on the limits near by find
// places early; they decide nothing.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/rigid_pattern.h"

namespace elbowroom::floor_kernel {

class RigidSearch {
 public:
  RigidSearch(const Surroundings& around, RigidPattern pattern);

  // The first place found at exactly this turn.
  std::optional<Pose> anywhereAt(double turn);
  // The first place found at any turn.
  std::optional<Pose> anywhere();
  // The place nearest to `near` at its turn, or over all turns; within 0.02 in of the nearest.
  std::optional<Pose> nearestAt(Pose near);
  std::optional<Pose> nearest(Pose near);

  // How many boxes were looked at; for tests and tuning.
  int looked() const { return looked_; }

 private:
  struct Cell {
    double key = 0;  // nearest first
    Vec at, half;
    double turn = 0, spread = 0;
    double next_step = 0;  // size below which a step is tried
    std::uint32_t first = 0, count = 0;
    bool seed = false;  // not yet halved to the size where turns are told apart
  };

  void makeSeeds();
  void splitSeed(const Cell& cell);
  bool settleCells(Cell start);
  std::optional<Pose> runAnywhere(double turn, double spread);
  std::optional<Pose> runNearest(Pose near, double spread);
  void examine(const Cell& cell);
  bool dropped(const Cell& cell);
  void offer(const Pose& pose);
  void step(Pose pose, const Cell& cell);
  void add(Cell cell);
  double valueOf(const Pose& pose) const;
  double boundOf(const Cell& cell) const;
  double turnAway(double turn, double spread) const;

  const Surroundings& around_;
  RigidPattern pattern_;
  std::vector<std::uint32_t> arena_;
  std::vector<Cell> seeds_, open_;
  std::size_t seed_arena_ = 0;
  bool has_seeds_ = false;

  bool nearest_ = false;  // goal: the nearest place to near_, else any
  bool turns_ = false;    // may turn
  Pose near_;
  double best_ = 0;
  std::optional<Pose> found_;
  int looked_ = 0;
};

// Moves the pose towards `target` (or as little as possible) so that the limits of these blockers hold, as
// far as their tangents tell; a few rounds. `turns`: whether it may turn. No promise that it ends clear.
Pose stepped(const Surroundings& around, const RigidPattern& pattern, const std::uint32_t* list,
             std::size_t count, Pose pose, const Vec* target, bool turns);

// Whole answers: found, moved clear of the last overlap where that is possible close by.
std::optional<Pose> nearestRigid(const Surroundings& around, const RigidPattern& pattern, Pose near,
                                 bool any_turn);
// Square to the plan first, then to a wall, then any turn.
std::optional<Pose> anywhereRigid(const Surroundings& around, const RigidPattern& pattern);
// For a pattern whose reference point is its centre; `turn` when it was not to change.
std::optional<Placed> placedAs(const std::optional<Pose>& pose, std::optional<Angle> turn = std::nullopt);

}  // namespace elbowroom::floor_kernel
