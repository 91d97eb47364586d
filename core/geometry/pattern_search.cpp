#include "core/geometry/pattern_search.h"

#include <algorithm>
#include <limits>
#include <tuple>
#include <utility>

#include "core/geometry/tangent_step.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kRoot2 = 1.4142135623730951;
constexpr double kAlwaysFound = 0.010;  // overlap up to this is never overlooked
constexpr double kSeedHalf = 2.0;
constexpr double kNearestTolerance = 0.012;

// Each limit as the side of the Minkowski hexagon that separates best at the present centre.
Pull pullOf(const Chord& chord, Vec at, BoxHalf half, int edge) {
  const Vec a = chord.a - at, b = a + chord.d;
  Pull best{std::fmin(a.x, b.x) - half.x, {-1, 0}, edge};
  const auto offer = [&](double gap, Vec away) {
    if (gap > best.distance) best = {gap, away, edge};
  };
  offer(-std::fmax(a.x, b.x) - half.x, {1, 0});
  offer(std::fmin(a.y, b.y) - half.y, {0, -1});
  offer(-std::fmax(a.y, b.y) - half.y, {0, 1});
  const double length = norm(chord.d);
  if (length > 0) {
    const Vec normal{-chord.d.y / length, chord.d.x / length};
    const double off = dot(normal, a);
    offer(std::fabs(off) - half.x * std::fabs(normal.x) - half.y * std::fabs(normal.y),
          off > 0 ? -1.0 * normal : normal);
  }
  return best;
}

}  // namespace

PatternSearch::PatternSearch(const Kernel& kernel, Pattern pattern, Vec near)
    : kernel_(kernel), pattern_(std::move(pattern)), near_(near), best_(kInfinity) {
  if (!kernel.has_floor) return;
  std::vector<std::uint32_t> all(kernel.edges.size());
  for (std::uint32_t i = 0; i < all.size(); ++i) all[i] = i;
  startSquares(kernel, [&](Vec at, double half) { collect(at, half, all); });
  std::sort(squares_.begin(), squares_.end(), [](const Square& a, const Square& b) {
    return std::tuple(a.away, a.at.y, a.at.x) < std::tuple(b.away, b.at.y, b.at.x);
  });
}

double PatternSearch::away(Vec at, double half) const {
  return norm(
      {std::fmax(0, std::fabs(at.x - near_.x) - half), std::fmax(0, std::fabs(at.y - near_.y) - half)});
}

// Halves down to small squares and keeps for each the edges that the pattern can reach from it, nearest
// first.
void PatternSearch::collect(Vec at, double half, const std::vector<std::uint32_t>& edges) {
  const double diagonal = half * kRoot2;
  const Value value = kernel_.valueAt(at);
  if (value.f + diagonal < pattern_.inscribed - kAlwaysFound) return;
  const double reach = pattern_.circumscribed + diagonal;
  std::vector<std::pair<double, std::uint32_t>> kept;
  for (const std::uint32_t i : edges) {
    const double squared = kernel_.edges[i].distanceSquared(at);
    if (squared <= reach * reach) kept.push_back({squared, i});
  }
  if (half > kSeedHalf) {
    std::vector<std::uint32_t> inner;
    for (const auto& [squared, i] : kept) inner.push_back(i);
    const double q = half / 2;
    for (const Vec d : {Vec{-q, -q}, Vec{q, -q}, Vec{-q, q}, Vec{q, q}}) collect(at + d, q, inner);
    return;
  }
  std::sort(kept.begin(), kept.end());
  const auto first = static_cast<std::uint32_t>(arena_.size());
  for (const auto& [squared, i] : kept) arena_.push_back(i);
  squares_.push_back({at, half, away(at, half), first, static_cast<std::uint32_t>(kept.size())});
}

std::vector<Chord> PatternSearch::chordsAt(const Frame& frame) const {
  std::vector<Chord> chords;
  chords.reserve(kernel_.edges.size());
  for (const Edge& e : kernel_.edges) chords.push_back({frame.into(e.a), frame.into(e.d)});
  return chords;
}

bool PatternSearch::meets(Vec framed, double shrink, const Square& seed) const {
  for (std::uint32_t i = 0; i < seed.count; ++i) {
    const Chord& chord = chords_[arena_[seed.first + i]];
    for (const PatternBox& box : pattern_.boxes)
      if (meetsBox(chord, framed + box.offset, {box.half.x - shrink, box.half.y - shrink})) return true;
  }
  return false;
}

bool PatternSearch::tryTurn(Angle turn) {
  frame_ = Frame::turnedBy(turn);
  chords_ = chordsAt(frame_);
  const double before = best_;
  for (const Square& square : squares_) {
    if (square.away >= best_ - kNearestTolerance) break;
    if (search(square.at, square.half, square) && any_place_) break;
  }
  if (best_ >= before) return false;
  best_turn_ = turn;
  return true;
}

bool PatternSearch::search(Vec at, double half, const Square& seed) {
  if (away(at, half) >= best_ - kNearestTolerance) return false;
  const Vec framed = frame_.into(at);
  const double diagonal = half * kRoot2;
  if (meets(framed, kAlwaysFound + diagonal, seed)) return false;
  bool found = false;
  if (!meets(framed, kContact.inches(), seed) && kernel_.isFree(at)) {
    const auto offer = [&](Vec place) {
      const double d = norm(place - near_);
      if (d < best_) best_ = d, best_at_ = place, found = true;
    };
    offer(at);
    if (found && any_place_) return true;
    if (!meets(framed, -diagonal, seed)) {
      offer({std::clamp(near_.x, at.x - half, at.x + half), std::clamp(near_.y, at.y - half, at.y + half)});
      return found;
    }
  }
  if (diagonal < kContact.inches() - kAlwaysFound) return found;
  const double q = half / 2;
  // Nearer quarters first, so that the others are cut off by the best place.
  const double sx = near_.x < at.x ? -q : q, sy = near_.y < at.y ? -q : q;
  const bool x_first = std::fabs(near_.x - at.x) < std::fabs(near_.y - at.y);
  const Vec second = x_first ? Vec{-sx, sy} : Vec{sx, -sy};
  for (const Vec d : {Vec{sx, sy}, second, Vec{-second.x, -second.y}, Vec{-sx, -sy}}) {
    if (search(at + d, q, seed)) {
      found = true;
      if (any_place_) return true;
    }
  }
  return found;
}

double PatternSearch::depthAt(Vec framed, const std::vector<Chord>& chords) const {
  double depth = 0;
  for (const Chord& chord : chords)
    for (const PatternBox& box : pattern_.boxes)
      depth = std::fmax(depth, deepest(chord, framed + box.offset, box.half).depth);
  return depth;
}

std::optional<Placed> PatternSearch::result() const {
  if (best_ == kInfinity) return std::nullopt;
  const Frame frame = Frame::turnedBy(best_turn_);
  const std::vector<Chord> chords = chordsAt(frame);
  const Vec wanted = frame.into(any_place_ ? best_at_ : near_);
  Vec at = frame.into(best_at_);
  Vec chosen = at;
  const double slack = 0.05;
  for (int round = 0; round < 6; ++round) {
    Pulls pulls;
    for (std::size_t i = 0; i < chords.size(); ++i)
      for (const PatternBox& box : pattern_.boxes)
        pulls.add(pullOf(chords[i], at + box.offset, box.half, static_cast<int>(i)));
    const std::optional<Vec> step = nearestStep(pulls, 0, wanted - at);
    if (!step) break;
    const Vec to = at + *step;
    if (norm(to - wanted) > norm(frame.into(best_at_) - wanted) + slack || depthAt(to, chords) > 1e-6) break;
    const bool settled = norm(*step) < 1e-7;
    at = chosen = to;
    if (settled) break;
  }
  return Placed{toPoint(frame.outOf(chosen)), best_turn_};
}

std::vector<Angle> turnsToTry(const Kernel& kernel, int full_circle_degrees) {
  const std::int64_t full = std::int64_t{full_circle_degrees} * 1'000'000, quarter = 90'000'000;
  std::vector<std::int64_t> turns;
  for (const Edge& e : kernel.edges) {
    if (e.inverse == 0) continue;
    const std::int64_t turn = Angle::fromRadians(std::atan2(e.d.y, e.d.x)).normalised().microdegrees();
    for (std::int64_t t = turn % quarter; t < full; t += quarter) turns.push_back(t);
  }
  for (std::int64_t t = 0; t < full; t += 1'000'000) turns.push_back(t);
  std::sort(turns.begin(), turns.end());
  turns.erase(std::unique(turns.begin(), turns.end()), turns.end());
  std::vector<Angle> angles;
  for (const std::int64_t t : turns) angles.push_back(Angle::microdegrees(t));
  return angles;
}

}  // namespace elbowroom::floor_kernel
