#include "core/geometry/rigid_search.h"

#include <algorithm>
#include <limits>
#include <numbers>
#include <utility>

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kNeverDropped = 0.010;
constexpr double kSmallest = 0.004;  // boxes whose poses differ by less are settled by their middle
constexpr double kSeedHalf = 2.0;
constexpr double kNearestTolerance = 0.010;
constexpr double kWideTurn = 0.4;   // over more than this, only the inscribed disc tells anything
constexpr double kTurnTie = 0.004;  // inches per radian: on ties the turn nearest to the wanted one

// How far along the axis `n` a box of places reaches.
double support(Vec n, Vec half) { return half.x * std::fabs(n.x) + half.y * std::fabs(n.y); }

// Four axes and, for each, how much closer a side has to be than its own distance, at the two end turns.
struct Slab {
  Vec axis;
  double shrink;
};

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

double gapOf(const Blocker& edge, const Piece& piece, const Axes& axes, Vec at) {
  const Vec u = axes.first(piece.diagonal), v = axes.second(piece.diagonal);
  const Vec ra = edge.a - at;
  const double ax = dot(ra, u), ay = dot(ra, v), dx = dot(edge.d, u), dy = dot(edge.d, v);
  const double bx = ax + dx, by = ay + dy;
  double gap = std::max(std::min(ax, bx) - piece.high.x, piece.low.x - std::max(ax, bx));
  gap = std::max(gap, std::max(std::min(ay, by) - piece.high.y, piece.low.y - std::max(ay, by)));
  const double hx = 0.5 * (piece.high.x - piece.low.x), hy = 0.5 * (piece.high.y - piece.low.y);
  const double mx = 0.5 * (piece.high.x + piece.low.x) - ax, my = 0.5 * (piece.high.y + piece.low.y) - ay;
  const double over = std::fabs(dx * my - dy * mx) - hx * std::fabs(dy) - hy * std::fabs(dx);
  return std::max(gap, over * std::sqrt(edge.inverse));
}

}  // namespace

RigidSearch::RigidSearch(const Surroundings& around, RigidPattern pattern)
    : around_(around), pattern_(std::move(pattern)) {}

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

void RigidSearch::offer(const Pose& pose) {
  const double value = nearest_ ? valueOf(pose) : 0;
  if (found_ && value >= best_) return;
  best_ = value;
  found_ = pose;
}

// Quarters a square until turns are told apart, dropping where the inscribed disc cannot lie.
void RigidSearch::splitSeed(const Cell& cell) {
  const double diagonal = norm(cell.half);
  const Value value = around_.floor->valueAt(cell.at);
  if (value.f + diagonal < pattern_.inscribed - kNeverDropped) return;
  if (!around_.mayBeFree(cell.at, diagonal)) return;
  const double reach = pattern_.reach + diagonal, squared = reach * reach;
  Cell inner = cell;
  inner.first = static_cast<std::uint32_t>(arena_.size());
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const std::uint32_t edge = arena_[cell.first + i];
    if (around_.blockers[edge].distanceSquared(cell.at) <= squared) arena_.push_back(edge);
  }
  inner.count = static_cast<std::uint32_t>(arena_.size()) - inner.first;
  if (std::max(cell.half.x, cell.half.y) <= kSeedHalf) {
    inner.seed = false;
    inner.key = -value.f;
    inner.next_step = kInfinity;
    if (nearest_)
      add(inner);
    else
      seeds_.push_back(inner);
    return;
  }
  inner.half = 0.5 * cell.half;
  for (const double sx : {-1.0, 1.0})
    for (const double sy : {-1.0, 1.0}) {
      inner.at = cell.at + Vec{sx * inner.half.x, sy * inner.half.y};
      if (nearest_)
        add(inner);
      else
        splitSeed(inner);
    }
}

void RigidSearch::makeSeeds() {
  if (has_seeds_) return;
  has_seeds_ = true;
  nearest_ = false;
  arena_.clear();
  if (!around_.floor->has_floor) return;
  const auto all = static_cast<std::uint32_t>(around_.blockers.size());
  for (std::uint32_t i = 0; i < all; ++i) arena_.push_back(i);
  startSquares(*around_.floor, [&](Vec at, double half) {
    Cell cell;
    cell.at = at;
    cell.half = {half, half};
    cell.count = all;
    cell.seed = true;
    splitSeed(cell);
  });
  // The roomiest last, that is first from a stack.
  std::sort(seeds_.begin(), seeds_.end(), [](const Cell& a, const Cell& b) { return a.key > b.key; });
  seed_arena_ = arena_.size();
}

std::optional<Pose> RigidSearch::runAnywhere(double turn, double spread) {
  makeSeeds();
  turns_ = spread > 0;
  found_.reset();
  open_.clear();
  arena_.resize(seed_arena_);
  for (Cell seed : seeds_) {
    seed.turn = turn;
    seed.spread = spread;
    open_.push_back(seed);
  }
  while (!open_.empty() && !found_) {
    const Cell cell = open_.back();
    open_.pop_back();
    examine(cell);
  }
  return found_;
}

std::optional<Pose> RigidSearch::runNearest(Pose near, double spread) {
  near_ = near;
  nearest_ = true;
  turns_ = spread > 0;
  best_ = kInfinity;
  found_.reset();
  open_.clear();
  arena_.clear();
  has_seeds_ = false;
  if (!around_.floor->has_floor) return found_;
  const auto all = static_cast<std::uint32_t>(around_.blockers.size());
  for (std::uint32_t i = 0; i < all; ++i) arena_.push_back(i);
  startSquares(*around_.floor, [&](Vec at, double half) {
    Cell cell;
    cell.at = at;
    cell.half = {half, half};
    cell.turn = near.turn;
    cell.spread = spread;
    cell.count = all;
    cell.seed = true;
    add(cell);
  });
  while (!open_.empty()) {
    std::pop_heap(open_.begin(), open_.end(), [](const Cell& a, const Cell& b) { return a.key > b.key; });
    const Cell cell = open_.back();
    open_.pop_back();
    if (cell.key >= best_ - kNearestTolerance) break;
    if (cell.seed)
      splitSeed(cell);
    else
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
  const std::uint32_t* list = arena_.data() + cell.first;
  if (cell.spread > kWideTurn) {
    const double r = pattern_.inscribed - kNeverDropped - norm(cell.half);
    if (r > 0)
      for (std::uint32_t i = 0; i < cell.count; ++i)
        if (around_.blockers[list[i]].layer == 1 &&
            around_.blockers[list[i]].distanceSquared(cell.at) < r * r)
          return true;
    return false;
  }
  const double cosine = std::cos(cell.spread);
  const int ends = cell.spread > 0 ? 2 : 1;
  const Axes low(cell.turn - cell.spread), high(cell.turn + cell.spread);
  struct Frame {
    Slab slab[4];  // first and second axis at the low turn, then at the high one
  };
  const auto frameOf = [&](bool diagonal) {
    Frame f;
    const Vec axis[4] = {low.first(diagonal), low.second(diagonal), high.first(diagonal),
                         high.second(diagonal)};
    for (int i = 0; i < 4; ++i) f.slab[i] = {axis[i], kNeverDropped + support(axis[i], cell.half)};
    return f;
  };
  const Frame straight = frameOf(false), diagonal = frameOf(true);
  for (std::uint32_t i = 0; i < cell.count; ++i) {
    const Blocker& edge = around_.blockers[list[i]];
    const Vec ra = edge.a - cell.at, rb = ra + edge.d;
    for (const Piece& piece : pattern_.pieces) {
      if (!(piece.layers & edge.layer)) continue;
      const Frame& frame = piece.diagonal ? diagonal : straight;
      double from = 0, to = 1;
      bool in = true;
      for (int k = 0; k < 2 * ends && in; ++k) {
        const Slab& s = frame.slab[k];
        const double lo = k & 1 ? piece.low.y : piece.low.x, hi = k & 1 ? piece.high.y : piece.high.x;
        const double least = -turnedIn(-lo, cosine) + s.shrink, most = turnedIn(hi, cosine) - s.shrink;
        in = least < most && clip(dot(ra, s.axis), dot(rb, s.axis), least, most, from, to);
      }
      if (in) {
        // What has dropped one cell often drops the next.
        if (i > 0) std::swap(arena_[cell.first], arena_[cell.first + i]);
        return true;
      }
    }
  }
  return false;
}

void RigidSearch::step(Pose pose, const Cell& cell) {
  const Vec* target = nearest_ ? &near_.at : nullptr;
  Pose to = stepped(around_, pattern_, arena_.data() + cell.first, cell.count, pose, target, turns_);
  if (nearest_ && found_ && valueOf(to) >= best_) return;
  if (liesClear(around_, pattern_, to)) offer(to);
}

void RigidSearch::examine(const Cell& cell) {
  ++looked_;
  if (dropped(cell)) return;
  if (cell.spread > kWideTurn) {
    Cell inner = cell;
    inner.spread = cell.spread / 2;
    for (const double s : {-1.0, 1.0}) {
      inner.turn = cell.turn + s * inner.spread;
      add(inner);
    }
    return;
  }
  const Axes axes(cell.turn);
  const double swing = pattern_.reach * 2 * std::sin(cell.spread / 2);
  const double size = norm(cell.half) + swing;
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
      const double g = gapOf(edge, pattern_.pieces[p], axes, cell.at);
      if (g < gap) gap = g;
      if (g < least) least = g, worst_edge = index, worst_piece = static_cast<int>(p);
    }
    if (gap <= size) arena_.push_back(index);
  }
  inner.count = static_cast<std::uint32_t>(arena_.size()) - inner.first;

  const Pose middle{cell.at, cell.turn};
  if (least >= -kContact.inches() && (!found_ || nearest_) && liesClear(around_, pattern_, middle)) {
    offer(middle);
    if (!nearest_) return;
    step(middle, inner);
    // Clear all over: the nearest pose of the cell is the answer here.
    if (inner.count == 0 || least > size) {
      const Vec at{std::clamp(near_.at.x, cell.at.x - cell.half.x, cell.at.x + cell.half.x),
                   std::clamp(near_.at.y, cell.at.y - cell.half.y, cell.at.y + cell.half.y)};
      const double off = std::remainder(near_.turn - cell.turn, pattern_.period);
      const Pose pose{at, cell.turn + std::clamp(off, -cell.spread, cell.spread)};
      if (liesClear(around_, pattern_, pose)) {
        offer(pose);
        return;
      }
    }
  } else if (least >= -kContact.inches() && !around_.mayBeFree(cell.at, norm(cell.half))) {
    return;
  } else if (size < cell.next_step && size < 8 && least > -2) {
    step(middle, inner);
    if (found_ && !nearest_) return;
    inner.next_step = size / 5;
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
