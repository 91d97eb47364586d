#include "core/geometry/rigid_search.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <utility>

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kSmallest = 0.004;  // boxes whose poses differ by less are settled by their middle
constexpr double kNearestTolerance = 0.010;
constexpr std::size_t kRecent = 6;
constexpr double kSwingTold = 10;  // a cell that turns farther is split by turn before gaps are measured
constexpr double kWideTurn = 0.125;  // over more than this, only the inscribed disc tells anything
// Sizes of cells at which a proof and a step are tried, and how much smaller it is tried again.
constexpr double kProofSize = 4, kProofAgain = 0.85, kStepSize = 3, kStepAgain = 5;
constexpr double kStepDepth = -1;   // what reaches in deeper is not stepped away from
constexpr double kTurnTie = 0.003;  // inches per radian: on ties the turn nearest to the wanted one

// A piece between two of its sides, moved in so far that what lies within does so at every pose of a cell.
bool clip(double a, double b, double low, double high, double& from, double& to) {
  if (a < low) {
    if (b <= low) return false;
    from = std::max(from, (low - a) / (b - a));
  } else if (b < low) {
    to = std::min(to, (low - a) / (b - a));
  }
  if (a > high) {
    if (b >= high) return false;
    from = std::max(from, (high - a) / (b - a));
  } else if (b > high) {
    to = std::min(to, (high - a) / (b - a));
  }
  return from < to;
}

// An edge in one of the two frames of a turn.
struct Turned {
  double ax, ay, dx, dy, low_x, high_x, low_y, high_y, per_length;

  Turned(const Blocker& edge, Vec u, Vec v, Vec at) {
    const Vec ra = edge.a - at;
    ax = dot(ra, u), ay = dot(ra, v), dx = dot(edge.d, u), dy = dot(edge.d, v);
    low_x = std::min(ax, ax + dx), high_x = std::max(ax, ax + dx);
    low_y = std::min(ay, ay + dy), high_y = std::max(ay, ay + dy);
    per_length = edge.per_length;
  }
  // How far off the piece it is; only that it is more than `enough` when it is.
  double gapTo(const Piece& piece, double enough) const {
    double gap = std::max(low_x - piece.high.x, piece.low.x - high_x);
    gap = std::max(gap, std::max(low_y - piece.high.y, piece.low.y - high_y));
    if (gap > enough) return gap;
    const double hx = 0.5 * (piece.high.x - piece.low.x), hy = 0.5 * (piece.high.y - piece.low.y);
    const double mx = 0.5 * (piece.high.x + piece.low.x) - ax, my = 0.5 * (piece.high.y + piece.low.y) - ay;
    const double over = std::fabs(dx * my - dy * mx) - hx * std::fabs(dy) - hy * std::fabs(dx);
    return std::max(gap, over * per_length);
  }
};

}  // namespace

RigidSearch::RigidSearch(const Surroundings& around, RigidPattern pattern, Grace grace)
    : around_(around), pattern_(std::move(pattern)), grace_(grace), ranges_(pattern_) {}

double RigidSearch::turnAway(double turn, double spread) const {
  const double apart = std::fabs(std::remainder(turn - near_.turn, pattern_.period));
  return std::max(0.0, apart - spread);
}

double RigidSearch::valueOf(const Pose& pose) const {
  return norm(pose.at - near_.at) + kTurnTie * turnAway(pose.turn, 0);
}

double RigidSearch::boundOf(const Cell& cell) const {
  if (!nearest_) return 0;
  const Vec off{std::max(0.0, std::fabs(cell.at.x - near_.at.x) - cell.half.x),
                std::max(0.0, std::fabs(cell.at.y - near_.at.y) - cell.half.y)};
  const TurnRange& turns = ranges_[cell.turns];
  return norm(off) + kTurnTie * turnAway(turns.turn, turns.spread);
}

void RigidSearch::add(Cell cell) {
  if (!nearest_) {
    open_.push_back(cell);
    return;
  }
  cell.key = boundOf(cell);
  if (cell.key >= best_ - kNearestTolerance) return;
  open_.push_back(cell);
  std::push_heap(open_.begin(), open_.end(), [](const Cell& a, const Cell& b) { return a.key > b.key; });
}

bool RigidSearch::tryPose(const Pose& pose) {
  const double value = nearest_ ? valueOf(pose) : 0;
  if (found_ && value >= best_) return liesClear(around_, pattern_, pose, grace_.accepted);
  if (!liesClear(around_, pattern_, pose, grace_.accepted)) return false;
  best_ = value;
  found_ = pose;
  return true;
}

void RigidSearch::makeSeeds() {
  if (has_seeds_) return;
  has_seeds_ = true;
  const Kernel& floor = *around_.floor;
  if (!floor.has_floor) return;
  const double radius = pattern_.inscribed - grace_.never_dropped;
  Squares own;
  if (radius < Kernel::kSquaresFor) own = searchSquares(floor, radius);
  const Squares& squares = radius < Kernel::kSquaresFor ? own : floor.squares();
  seed_half_ = squares.half;
  const double diagonal = norm({seed_half_, seed_half_});
  for (const Square& square : squares.all) {
    if (square.f + diagonal < radius) break;
    if (around_.mayBeFree(square.at, diagonal)) seeds_.push_back({square.at});
  }
}

RigidSearch::Cell RigidSearch::listed(Cell cell) {
  Seed& seed = seeds_[static_cast<std::size_t>(cell.seed)];
  if (!seed.listed) {
    const double reach = pattern_.reach + norm(cell.half), squared = reach * reach;
    seed.listed = true;
    seed.first = static_cast<std::uint32_t>(seed_lists_.size());
    for (std::uint32_t i = 0; i < around_.blockers.size(); ++i)
      if (around_.blockers[i].distanceSquared(cell.at) <= squared) seed_lists_.push_back(i);
    seed.count = static_cast<std::uint32_t>(seed_lists_.size()) - seed.first;
  }
  cell.seed = -1;
  cell.first = static_cast<std::uint32_t>(arena_.size());
  cell.count = seed.count;
  const auto from = seed_lists_.begin() + seed.first;
  arena_.insert(arena_.end(), from, from + seed.count);
  return cell;
}

void RigidSearch::split(const Cell& cell, int parts) {
  Cell part = cell;
  const int first = ranges_.split(cell.turns, parts);
  for (int i = 0; i < parts; ++i) {
    part.turns = first + i;
    add(part);
  }
}

RigidSearch::Cell RigidSearch::seedCell(std::size_t seed, int turns) const {
  Cell cell;
  cell.at = seeds_[seed].at;
  cell.half = {seed_half_, seed_half_};
  cell.turns = turns;
  cell.next_step = cell.next_proof = kInfinity;
  cell.seed = static_cast<int>(seed);
  return cell;
}

std::optional<Pose> RigidSearch::runAnywhere(double turn, double spread) {
  makeSeeds();
  nearest_ = false;
  turns_ = spread > 0;
  found_.reset();
  const int turns = ranges_.add(turn, spread);
  // The roomiest seed first, its cells on a stack.
  for (std::size_t i = first_seed_; i < seeds_.size() && !found_; ++i) {
    open_.clear();
    arena_.clear();
    open_.push_back(seedCell(i, turns));
    while (!open_.empty() && !found_) {
      const Cell cell = open_.back();
      open_.pop_back();
      examine(cell);
    }
    if (!found_ && spread >= pattern_.period / 2) first_seed_ = i + 1;
  }
  return found_;
}

std::optional<Pose> RigidSearch::runNearest(Pose near, double spread) {
  makeSeeds();
  near_ = near;
  nearest_ = true;
  turns_ = spread > 0;
  best_ = kInfinity;
  found_.reset();
  open_.clear();
  arena_.clear();
  const int turns = ranges_.add(near.turn, spread);
  for (std::size_t i = 0; i < seeds_.size(); ++i) add(seedCell(i, turns));
  while (!open_.empty()) {
    std::pop_heap(open_.begin(), open_.end(), [](const Cell& a, const Cell& b) { return a.key > b.key; });
    const Cell cell = open_.back();
    open_.pop_back();
    if (cell.key >= best_ - kNearestTolerance) break;
    examine(cell);
  }
  return found_;
}

std::optional<Pose> RigidSearch::anywhereAt(double turn) { return runAnywhere(turn, 0); }
std::optional<Pose> RigidSearch::anywhere() { return runAnywhere(0, pattern_.period / 2); }
std::optional<Pose> RigidSearch::nearestAt(Pose near) { return runNearest(near, 0); }
std::optional<Pose> RigidSearch::nearest(Pose near) { return runNearest(near, pattern_.period / 2); }

void RigidSearch::setCores(const Cell& cell) {
  slabs_ = ranges_[cell.turns].spread > 0 ? 4 : 2;
  cores_.clear();
  for (std::size_t p = 0; p < pattern_.pieces.size(); ++p) {
    Core core;
    core.slabs = &ranges_.slabs(cell.turns, p);
    core.layers = pattern_.pieces[p].layers;
    bool any = true;
    for (int k = 0; k < slabs_; ++k) {
      const Slab& slab = (*core.slabs)[k];
      const double shrink = grace_.never_dropped + dot(slab.lean, cell.half);
      core.least[k] = slab.least + shrink;
      core.most[k] = slab.most - shrink;
      any = any && core.least[k] < core.most[k];
    }
    if (any) cores_.push_back(core);
  }
}

bool RigidSearch::fills(const Blocker& edge, Vec at) const {
  const Vec ra = edge.a - at, rb = ra + edge.d;
  for (const Core& core : cores_) {
    if (!(core.layers & edge.layer)) continue;
    double from = 0, to = 1;
    bool in = true;
    for (int k = 0; k < slabs_ && in; ++k) {
      const Vec axis = (*core.slabs)[k].axis;
      in = clip(dot(ra, axis), dot(rb, axis), core.least[k], core.most[k], from, to);
    }
    if (in) return true;
  }
  return false;
}

bool RigidSearch::filledByRecent(Vec at) {
  for (std::size_t i = 0; i < recent_.size(); ++i)
    if (fills(around_.blockers[recent_[i]], at)) {
      std::rotate(recent_.begin(), recent_.begin() + static_cast<std::ptrdiff_t>(i),
                  recent_.begin() + static_cast<std::ptrdiff_t>(i) + 1);
      return true;
    }
  return false;
}

bool RigidSearch::filledBy(std::uint32_t blocker, Vec at) {
  if (!fills(around_.blockers[blocker], at)) return false;
  if (recent_.size() == kRecent) recent_.pop_back();
  recent_.insert(recent_.begin(), blocker);
  return true;
}

void RigidSearch::step(Pose pose, const Cell& cell) {
  const Vec* target = nearest_ ? &near_.at : nullptr;
  Pose to = stepped(around_, pattern_, arena_.data() + cell.first, cell.count, pose, target, turns_);
  if (nearest_ && found_ && valueOf(to) >= best_) return;
  tryPose(to);
}

bool RigidSearch::proven(const Cell& cell, Cell& inner, double size, double least) {
  if (size >= kProofSize || size >= cell.next_proof || least <= -size) return false;
  inner.next_proof = size * kProofAgain;
  const Vec* target = nearest_ && found_ ? &near_.at : nullptr;
  return provenFull(around_, pattern_, arena_.data() + inner.first, inner.count,
                    {cell.at, cell.half, ranges_[cell.turns]}, target, best_ - kNearestTolerance,
                    grace_.never_dropped);
}

void RigidSearch::examine(const Cell& asked) {
  const TurnRange& turns = ranges_[asked.turns];
  if (turns.spread > kWideTurn)
    return split(asked, static_cast<int>(std::ceil(turns.spread / kWideTurn - 1e-9)));
  ++looked_;
  // What has filled one cell often fills the next.
  setCores(asked);
  if (filledByRecent(asked.at)) return;
  const Cell cell = asked.seed < 0 ? asked : listed(asked);
  const Axes& axes = turns.axes;
  const double swing = pattern_.reach * turns.chord;
  const double size = norm(cell.half) + swing;
  if (swing > kSwingTold && swing > 2 * norm(cell.half)) {
    for (std::uint32_t i = 0; i < cell.count; ++i)
      if (filledBy(arena_[cell.first + i], cell.at)) return;
    return split(cell, 2);
  }
  // What fills the cell reaches at least so deep at its middle: cores are smaller than their pieces by more.
  const double filled = -grace_.never_dropped - std::min(cell.half.x, cell.half.y);
  Cell inner = cell;
  inner.first = static_cast<std::uint32_t>(arena_.size());
  double least = kInfinity;
  std::uint32_t worst_edge = 0;
  int worst_piece = 0;
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const std::uint32_t index = arena_[cell.first + i];
    const Blocker& edge = around_.blockers[index];
    double gap = kInfinity;
    const Turned plain(edge, axes.u, axes.v, cell.at);
    for (std::size_t p = 0; p < pattern_.pieces.size(); ++p) {
      const Piece& piece = pattern_.pieces[p];
      if (!(piece.layers & edge.layer)) continue;
      const double g = (piece.diagonal ? Turned(edge, axes.du, axes.dv, cell.at) : plain).gapTo(piece, size);
      if (g < gap) gap = g;
      if (g < least) least = g, worst_edge = index, worst_piece = static_cast<int>(p);
    }
    if (gap <= filled && filledBy(index, cell.at)) return;
    if (gap <= size) arena_.push_back(index);
  }
  inner.count = static_cast<std::uint32_t>(arena_.size()) - inner.first;

  const Pose middle{cell.at, turns.turn};
  if (least >= -grace_.accepted && (!found_ || nearest_) && tryPose(middle)) {
    if (!nearest_) return;
    step(middle, inner);
    // Clear all over: the nearest pose of the cell is the answer here.
    if (inner.count == 0 || least > size) {
      const Vec at{std::clamp(near_.at.x, cell.at.x - cell.half.x, cell.at.x + cell.half.x),
                   std::clamp(near_.at.y, cell.at.y - cell.half.y, cell.at.y + cell.half.y)};
      const double off = std::remainder(near_.turn - turns.turn, pattern_.period);
      const Pose pose{at, turns.turn + std::clamp(off, -turns.spread, turns.spread)};
      if (tryPose(pose)) return;
    }
    if (proven(cell, inner, size, least)) return;
  } else if (least >= -grace_.accepted && !around_.mayBeFree(cell.at, norm(cell.half))) {
    return;
  } else {
    if (proven(cell, inner, size, least)) return;
    if (size < kStepSize && size < cell.next_step && least > kStepDepth) {
      step(middle, inner);
      if (found_ && !nearest_) return;
      inner.next_step = size / kStepAgain;
    }
  }
  if (size < kSmallest) return;

  // Halve what moves the deepest limit most.
  double by_x = cell.half.x, by_y = cell.half.y, by_turn = 0.7 * swing;
  if (least < 0) {
    Contact contact[2];
    contactsOf(around_.blockers[worst_edge], pattern_.pieces[static_cast<std::size_t>(worst_piece)], axes,
               cell.at, contact);
    by_x *= std::max(0.05, std::fabs(contact[0].away.x));
    by_y *= std::max(0.05, std::fabs(contact[0].away.y));
    by_turn = turns.spread * std::max(0.1 * pattern_.reach, std::fabs(contact[0].lever));
  }
  if (turns.spread > 0 && by_turn >= by_x && by_turn >= by_y) {
    split(inner, 2);
  } else if (by_x >= by_y) {
    inner.half.x = cell.half.x / 2;
    for (const double s : {-1.0, 1.0}) {
      inner.at.x = cell.at.x + s * inner.half.x;
      add(inner);
    }
  } else {
    inner.half.y = cell.half.y / 2;
    for (const double s : {-1.0, 1.0}) {
      inner.at.y = cell.at.y + s * inner.half.y;
      add(inner);
    }
  }
}

}  // namespace elbowroom::floor_kernel
