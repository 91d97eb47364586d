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
constexpr double kWideTurn = 0.2;  // over more than this, only the inscribed disc tells anything
// Sizes of cells at which a proof and a step are tried, and how much smaller it is tried again.
constexpr double kProofSize = 6, kProofAgain = 0.7, kStepSize = 8, kStepAgain = 5;
constexpr double kTurnTie = 0.003;  // inches per radian: on ties the turn nearest to the wanted one

// How far along the axis `n` a box of places reaches.
double support(Vec n, Vec half) { return half.x * std::fabs(n.x) + half.y * std::fabs(n.y); }

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

// A side at `off` from the reference point, seen over all turns of a cell with this cosine.
double turnedIn(double off, double cosine) { return off >= 0 ? off * cosine : off; }

// Only that it is more than `enough` when it is.
double gapOf(const Blocker& edge, const Piece& piece, const Axes& axes, Vec at, double enough) {
  const Vec u = axes.first(piece.diagonal), v = axes.second(piece.diagonal);
  const Vec ra = edge.a - at;
  const double ax = dot(ra, u), ay = dot(ra, v), dx = dot(edge.d, u), dy = dot(edge.d, v);
  const double bx = ax + dx, by = ay + dy;
  double gap = std::max(std::min(ax, bx) - piece.high.x, piece.low.x - std::max(ax, bx));
  gap = std::max(gap, std::max(std::min(ay, by) - piece.high.y, piece.low.y - std::max(ay, by)));
  if (gap > enough) return gap;
  const double hx = 0.5 * (piece.high.x - piece.low.x), hy = 0.5 * (piece.high.y - piece.low.y);
  const double mx = 0.5 * (piece.high.x + piece.low.x) - ax, my = 0.5 * (piece.high.y + piece.low.y) - ay;
  const double over = std::fabs(dx * my - dy * mx) - hx * std::fabs(dy) - hy * std::fabs(dx);
  return std::max(gap, over * edge.per_length);
}

}  // namespace

RigidSearch::RigidSearch(const Surroundings& around, RigidPattern pattern, Grace grace)
    : around_(around), pattern_(std::move(pattern)), grace_(grace), frames_(pattern_.pieces.size()) {}

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
  return norm(off) + kTurnTie * turnAway(cell.turn, cell.spread);
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

// By turn, into parts of at most `spread` to both sides.
void RigidSearch::split(const Cell& cell, double spread) {
  const int parts = static_cast<int>(std::ceil(cell.spread / spread - 1e-9));
  Cell part = cell;
  part.spread = cell.spread / parts;
  for (int i = 0; i < parts; ++i) {
    part.turn = cell.turn - cell.spread + (2 * i + 1) * part.spread;
    add(part);
  }
}

std::optional<Pose> RigidSearch::runAnywhere(double turn, double spread) {
  makeSeeds();
  nearest_ = false;
  turns_ = spread > 0;
  found_.reset();
  // The roomiest seed first, its cells on a stack.
  for (std::size_t i = first_seed_; i < seeds_.size() && !found_; ++i) {
    open_.clear();
    arena_.clear();
    Cell cell;
    cell.at = seeds_[i].at;
    cell.half = {seed_half_, seed_half_};
    cell.turn = turn;
    cell.spread = spread;
    cell.next_step = cell.next_proof = kInfinity;
    cell.seed = static_cast<int>(i);
    open_.push_back(cell);
    while (!open_.empty() && !found_) {
      cell = open_.back();
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
  for (std::size_t i = 0; i < seeds_.size(); ++i) {
    Cell cell;
    cell.at = seeds_[i].at;
    cell.half = {seed_half_, seed_half_};
    cell.turn = near.turn;
    cell.spread = spread;
    cell.next_step = cell.next_proof = kInfinity;
    cell.seed = static_cast<int>(i);
    add(cell);
  }
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

// Does one point of some edge lie in the pattern at every pose of the cell?
bool RigidSearch::dropped(const Cell& cell) {
  std::size_t usable = 0;
  const double cosine = std::cos(cell.spread);
  const int slabs = cell.spread > 0 ? 4 : 2;
  const Axes low(cell.turn - cell.spread), high(cell.turn + cell.spread);
  for (std::size_t p = 0; p < pattern_.pieces.size(); ++p) {
    const Piece& piece = pattern_.pieces[p];
    Frame& frame = frames_[usable];
    frame.layers = piece.layers;
    bool any = true;
    for (int k = 0; k < slabs; ++k) {
      const Axes& axes = k < 2 ? low : high;
      const Vec axis = k & 1 ? axes.second(piece.diagonal) : axes.first(piece.diagonal);
      const double shrink = grace_.never_dropped + support(axis, cell.half);
      const double lo = k & 1 ? piece.low.y : piece.low.x, hi = k & 1 ? piece.high.y : piece.high.x;
      frame.slab[k] = {axis, -turnedIn(-lo, cosine) + shrink, turnedIn(hi, cosine) - shrink};
      any = any && frame.slab[k].least < frame.slab[k].most;
    }
    usable += any;
  }
  if (usable == 0) return false;
  const auto fills = [&](const Blocker& edge) {
    const Vec ra = edge.a - cell.at, rb = ra + edge.d;
    for (std::size_t p = 0; p < usable; ++p) {
      const Frame& frame = frames_[p];
      if (!(frame.layers & edge.layer)) continue;
      double from = 0, to = 1;
      bool in = true;
      for (int k = 0; k < slabs && in; ++k) {
        const Slab& s = frame.slab[k];
        in = clip(dot(ra, s.axis), dot(rb, s.axis), s.least, s.most, from, to);
      }
      if (in) return true;
    }
    return false;
  };
  // What has dropped one cell often drops the next.
  for (std::size_t i = 0; i < recent_.size(); ++i)
    if (fills(around_.blockers[recent_[i]])) {
      std::rotate(recent_.begin(), recent_.begin() + static_cast<std::ptrdiff_t>(i),
                  recent_.begin() + static_cast<std::ptrdiff_t>(i) + 1);
      return true;
    }
  const std::uint32_t* list = arena_.data() + cell.first;
  for (std::uint32_t i = 0; i < cell.count; ++i)
    if (fills(around_.blockers[list[i]])) {
      if (recent_.size() == kRecent) recent_.pop_back();
      recent_.insert(recent_.begin(), list[i]);
      return true;
    }
  return false;
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
                    {cell.at, cell.half, cell.turn, cell.spread}, target, best_ - kNearestTolerance,
                    grace_.never_dropped);
}

void RigidSearch::examine(const Cell& asked) {
  if (asked.spread > kWideTurn) return split(asked, kWideTurn);
  ++looked_;
  const Cell cell = asked.seed < 0 ? asked : listed(asked);
  if (dropped(cell)) return;
  const Axes axes(cell.turn);
  const double swing = pattern_.reach * 2 * std::sin(cell.spread / 2);
  const double size = norm(cell.half) + swing;
  if (swing > kSwingTold && swing > 2 * norm(cell.half)) return split(cell, cell.spread / 2);
  Cell inner = cell;
  inner.first = static_cast<std::uint32_t>(arena_.size());
  double least = kInfinity;
  std::uint32_t worst_edge = 0;
  int worst_piece = 0;
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const std::uint32_t index = arena_[cell.first + i];
    const Blocker& edge = around_.blockers[index];
    double gap = kInfinity;
    for (std::size_t p = 0; p < pattern_.pieces.size(); ++p) {
      if (!(pattern_.pieces[p].layers & edge.layer)) continue;
      const double g = gapOf(edge, pattern_.pieces[p], axes, cell.at, size);
      if (g < gap) gap = g;
      if (g < least) least = g, worst_edge = index, worst_piece = static_cast<int>(p);
    }
    if (gap <= size) arena_.push_back(index);
  }
  inner.count = static_cast<std::uint32_t>(arena_.size()) - inner.first;

  const Pose middle{cell.at, cell.turn};
  if (least >= -grace_.accepted && (!found_ || nearest_) && tryPose(middle)) {
    if (!nearest_) return;
    step(middle, inner);
    // Clear all over: the nearest pose of the cell is the answer here.
    if (inner.count == 0 || least > size) {
      const Vec at{std::clamp(near_.at.x, cell.at.x - cell.half.x, cell.at.x + cell.half.x),
                   std::clamp(near_.at.y, cell.at.y - cell.half.y, cell.at.y + cell.half.y)};
      const double off = std::remainder(near_.turn - cell.turn, pattern_.period);
      const Pose pose{at, cell.turn + std::clamp(off, -cell.spread, cell.spread)};
      if (tryPose(pose)) return;
    }
    if (proven(cell, inner, size, least)) return;
  } else if (least >= -grace_.accepted && !around_.mayBeFree(cell.at, norm(cell.half))) {
    return;
  } else {
    if (proven(cell, inner, size, least)) return;
    if (size < kStepSize && size < cell.next_step && least > -2) {
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
    by_turn = cell.spread * std::max(0.1 * pattern_.reach, std::fabs(contact[0].lever));
  }
  if (cell.spread > 0 && by_turn >= by_x && by_turn >= by_y) {
    inner.spread = cell.spread / 2;
    for (const double s : {-1.0, 1.0}) {
      inner.turn = cell.turn + s * inner.spread;
      add(inner);
    }
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
