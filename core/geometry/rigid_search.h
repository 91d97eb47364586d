// Private to core/geometry: whether and where a pattern fits among edges, at given turns or at any.
//
// Branch and bound over boxes of poses (place and turn). A box is dropped when one point of an edge lies in
// the pattern at every pose of the box; since a point that lies in a half plane turned by -s and by +s lies
// in it, moved in by a factor cos(s), at every turn between, whole stretches of turns go at once. A pose is
// accepted when nothing reaches deeper than kContact into the pattern. What reaches in by no more than 0.010
// in is never dropped, so "nowhere" is a proof up to that. Newton-like steps on the limits near by find
// places early; they decide nothing. The nearest place is looked for among those that need no contact
// forgiven; only where there is none, among all that are accepted.
#pragma once

#include <optional>
#include <vector>

#include "core/geometry/turn_range.h"

namespace elbowroom::floor_kernel {

// How deep a pose may overlap: up to `never_dropped` it is surely found, up to `accepted` it may be.
struct Grace {
  double never_dropped, accepted;
};
inline const Grace kForgiving{0.010, kContact.inches()};
inline constexpr Grace kTrueFits{0.0005, 0.003};

class RigidSearch {
 public:
  RigidSearch(const Surroundings& around, RigidPattern pattern, Grace grace = kForgiving);
  RigidSearch(const RigidSearch&) = delete;
  RigidSearch& operator=(const RigidSearch&) = delete;

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
    int turns = 0;                         // in ranges_
    double next_step = 0, next_proof = 0;  // sizes below which a step and a proof are tried
    std::uint32_t first = 0, count = 0;    // blockers that matter, in the arena
    int seed = -1;                         // not yet looked at: which seed
  };
  // A square where the inscribed disc may lie; its blockers are listed when first asked for.
  struct Seed {
    Vec at;
    std::uint32_t first = 0, count = 0;
    bool listed = false;
  };

  // Where a place lies in a piece at every pose of a cell: limits along the axes of its slabs.
  struct Core {
    const Slabs* slabs;
    double least[4], most[4];
    LayerMask layers;
  };

  void makeSeeds();
  Cell listed(Cell cell);
  std::optional<Pose> runAnywhere(double turn, double spread);
  std::optional<Pose> runNearest(Pose near, double spread);
  void examine(const Cell& cell);
  void split(const Cell& cell, int parts);
  void setCores(const Cell& cell);
  // Does one point of the edge lie in a core, that is, in the pattern at every pose of the cell?
  bool fills(const Blocker& edge, Vec at) const;
  bool filledByRecent(Vec at);
  bool filledBy(std::uint32_t blocker, Vec at);  // remembers it
  bool proven(const Cell& cell, Cell& inner, double size, double least);
  bool tryPose(const Pose& pose);  // takes it when it lies clear and is better than what is found
  void step(Pose pose, const Cell& cell);
  void add(Cell cell);
  double valueOf(const Pose& pose) const;
  double boundOf(const Cell& cell) const;
  double turnAway(double turn, double spread) const;
  Cell seedCell(std::size_t seed, int turns) const;

  const Surroundings& around_;
  RigidPattern pattern_;
  Grace grace_;
  TurnRanges ranges_;
  std::vector<Core> cores_;  // of the cell at hand
  int slabs_ = 4;            // of each core
  std::vector<std::uint32_t> arena_, seed_lists_;
  std::vector<std::uint32_t> recent_;  // blockers that filled cells lately
  std::vector<Seed> seeds_;
  std::vector<Cell> open_;
  double seed_half_ = 0;
  std::size_t first_seed_ = 0;  // those before it hold nothing at any turn
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

// A box of poses: places within `half` of `at` each way, turns within `spread`.
struct PoseBox {
  Vec at, half;
  const TurnRange& turns;
};
// True is a proof: at every pose of the box that lies within `within` of `target` (all poses without a
// target) one of the listed blockers reaches deeper than `never_dropped` into the pattern. By weights on the
// limits whose weighted sum stays negative over the whole box, so boxes go that no single blocker fills.
bool provenFull(const Surroundings& around, const RigidPattern& pattern, const std::uint32_t* list,
                std::size_t count, const PoseBox& box, const Vec* target, double within,
                double never_dropped);

// Whole answers: found, moved clear of the last overlap where that is possible close by.
std::optional<Pose> nearestRigid(const Surroundings& around, const RigidPattern& pattern, Pose near,
                                 bool any_turn);
// Square to the plan first, then to a wall, then any turn.
std::optional<Pose> anywhereRigid(const Surroundings& around, const RigidPattern& pattern);
// For a pattern whose reference point is its centre; `turn` when it was not to change.
std::optional<Placed> placedAs(const std::optional<Pose>& pose, std::optional<Angle> turn = std::nullopt);

}  // namespace elbowroom::floor_kernel
