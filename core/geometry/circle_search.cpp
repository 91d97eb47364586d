// Largest and nearest circle by best-first halving of squares, each with the list of edges that can still be
// nearest inside it, and a final exact step on the edges and corners that touch.
#include <algorithm>
#include <array>
#include <cstdint>
#include <limits>

#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/tangent_step.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();
constexpr double kRoot2 = 1.4142135623730951;

struct Cell {
  double key;
  Vec at;
  double half;                 // half of the side
  std::uint32_t first, count;  // candidate edges in the arena
};

struct Scratch {
  std::vector<std::uint32_t> arena;
  std::vector<double> squared;
  std::vector<Cell> heap;
};

Scratch& scratch() {
  thread_local Scratch s;
  return s;
}

// Common part of the two searches.
class CellQueue {
 public:
  explicit CellQueue(const Kernel& k) : kernel_(k), s_(scratch()) {
    s_.heap.clear();
    s_.arena.resize(k.edges.size());
    for (std::uint32_t i = 0; i < s_.arena.size(); ++i) s_.arena[i] = i;
    s_.squared.resize(k.edges.size());
  }

  template <class Visit>
  void coverRoom(Visit visit) {
    const auto all = static_cast<std::uint32_t>(kernel_.edges.size());
    startSquares(kernel_, [&](Vec at, double half) { visit(at, half, 0u, all); });
  }

  // f at `at` from the candidate edges; -infinity when the whole square lies in one obstacle or outside.
  double valueAt(Vec at, std::uint32_t first, std::uint32_t count) {
    double least = kInfinity;
    for (std::uint32_t i = 0; i < count; ++i) {
      const double squared = kernel_.edges[s_.arena[first + i]].distanceSquared(at);
      s_.squared[i] = squared;
      least = squared < least ? squared : least;
    }
    nearest_ = std::sqrt(least);
    double depth = -1;
    for (std::size_t r = 0; r < kernel_.rings.size(); ++r) {
      if (kernel_.inside(kernel_.rings[r], at) == (r == 0)) continue;
      double own = kInfinity;
      for (std::uint32_t i = 0; i < count; ++i)
        if (kernel_.edges[s_.arena[first + i]].ring == static_cast<int>(r))
          own = std::min(own, s_.squared[i]);
      if (own == kInfinity) return -kInfinity;
      depth = std::max(depth, own);
    }
    return depth < 0 ? nearest_ : -std::sqrt(depth);
  }

  // After valueAt with the same list: keeps what can be nearest somewhere in the square.
  void push(double key, Vec at, double half, std::uint32_t first, std::uint32_t count) {
    const double cut = nearest_ + 2 * kRoot2 * half, cut_squared = cut * cut;
    const std::size_t start = s_.arena.size();
    s_.arena.resize(start + count);
    std::size_t end = start;
    for (std::uint32_t i = 0; i < count; ++i) {
      s_.arena[end] = s_.arena[first + i];
      end += s_.squared[i] <= cut_squared;
    }
    s_.arena.resize(end);
    s_.heap.push_back(
        {key, at, half, static_cast<std::uint32_t>(start), static_cast<std::uint32_t>(end - start)});
    std::push_heap(s_.heap.begin(), s_.heap.end(),
                   [](const Cell& a, const Cell& b) { return a.key < b.key; });
  }

  bool empty() const { return s_.heap.empty(); }
  Cell pop() {
    std::pop_heap(s_.heap.begin(), s_.heap.end(), [](const Cell& a, const Cell& b) { return a.key < b.key; });
    const Cell cell = s_.heap.back();
    s_.heap.pop_back();
    return cell;
  }

 private:
  const Kernel& kernel_;
  Scratch& s_;
  double nearest_ = 0;
};

// The nearest features within `reach`, each corner once.
Pulls pullsAt(const Kernel& kernel, Vec at, double reach) {
  Pulls pulls;
  for (const Ring& ring : kernel.rings) {
    if (ring.squareTo(at) > reach * reach) continue;
    for (int i = ring.first; i < ring.last; ++i) {
      const Vec v = at - kernel.edges[static_cast<std::size_t>(i)].nearest(at);
      const double squared = dot(v, v);
      if (squared > reach * reach || squared == 0) continue;
      const double d = std::sqrt(squared);
      if (pulls.count == kMostPulls && d >= pulls.item[pulls.count - 1].distance) continue;
      const Pull pull{d, (1 / d) * v, i};
      bool known = false;
      for (int j = 0; j < pulls.count && !known; ++j)
        known = std::fabs(pulls.item[j].distance - d) < 1e-9 && dot(pulls.item[j].away, pull.away) > 1 - 1e-12;
      if (known) continue;
      pulls.add(pull);
    }
  }
  return pulls;
}

// Weights w >= 0 with sum 1 on up to three edges. Distances are convex, so over any square
// f <= sum w * distance <= its largest corner value. With the weights of a maximum the bound is tight there.
struct Proof {
  std::array<int, 3> edge{};
  std::array<double, 3> weight{};
  int count = 0;
};

struct Rise {
  bool found = false;
  Vec step;
  Proof proof;
};

// Linear programme "raise the least distance" solved by its dual: the triple (or opposite pair) of features
// that holds the point from all sides and has the least weighted distance.
Rise riseFrom(const Pulls& pulls) {
  Rise rise;
  double least = kInfinity;
  for (int i = 0; i < pulls.count; ++i) {
    const Pull& a = pulls.item[i];
    for (int j = i + 1; j < pulls.count; ++j) {
      const Pull& b = pulls.item[j];
      if (dot(a.away, b.away) < -1 + 1e-11) {
        const double value = (a.distance + b.distance) / 2;
        if (value < least) {
          least = value;
          rise = {true, ((b.distance - a.distance) / 2) * a.away, {{a.edge, b.edge, 0}, {0.5, 0.5, 0}, 2}};
        }
        continue;
      }
      for (int k = j + 1; k < pulls.count; ++k) {
        const Pull& c = pulls.item[k];
        double wa = cross(b.away, c.away), wb = cross(c.away, a.away), wc = cross(a.away, b.away);
        const double sum = wa + wb + wc;
        if (std::fabs(sum) < 1e-9) continue;
        wa /= sum, wb /= sum, wc /= sum;
        if (wa < 0 || wb < 0 || wc < 0) continue;
        const double value = wa * a.distance + wb * b.distance + wc * c.distance;
        if (value >= least) continue;
        const Vec ab = a.away - b.away, ac = a.away - c.away;
        const double det = cross(ab, ac);
        if (std::fabs(det) < 1e-9) continue;
        const double p = b.distance - a.distance, q = c.distance - a.distance;
        least = value;
        rise = {true,
                {(p * ac.y - q * ab.y) / det, (q * ab.x - p * ac.x) / det},
                {{a.edge, b.edge, c.edge}, {wa, wb, wc}, 3}};
      }
    }
  }
  return rise;
}

double provenBound(const Kernel& kernel, const Proof& proof, Vec at, double half) {
  double most = 0;
  for (int corner = 0; corner < 4; ++corner) {
    const Vec p = at + Vec{corner & 1 ? half : -half, corner & 2 ? half : -half};
    double sum = 0;
    for (int i = 0; i < proof.count; ++i)
      sum += proof.weight[i] * std::sqrt(kernel.edges[proof.edge[i]].distanceSquared(p));
    most = std::max(most, sum);
  }
  return most;
}

// The circle at a centre on the nanometre grid, its radius rounded down.
Circle circleAt(const Kernel& kernel, Vec at) {
  const Point center = toPoint(at);
  const double f = kernel.valueAt(toInches(center)).f;
  if (!(f > 0)) return {center, Length{}};
  return {center, std::max(Length{}, Length::fromInches(f) - Length::nanometres(1))};
}

constexpr double kLargestTolerance = 0.001;

class LargestSearch {
 public:
  explicit LargestSearch(const Kernel& kernel) : kernel_(kernel), squares_(kernel) {}

  Circle run() {
    if (!kernel_.has_floor) return {};
    squares_.coverRoom([this](Vec at, double half, std::uint32_t first, std::uint32_t count) {
      visit(at, half, first, count);
    });
    while (!squares_.empty()) {
      const Cell cell = squares_.pop();
      if (cell.key <= best_ + kLargestTolerance) break;
      if (!polished_ && cell.half < 4) polish(cell.half);
      if (cell.key <= best_ + kLargestTolerance) break;
      if (isProvenLow(cell)) continue;
      const double q = cell.half / 2;
      for (const Vec d : {Vec{-q, -q}, Vec{q, -q}, Vec{-q, q}, Vec{q, q}})
        visit(cell.at + d, q, cell.first, cell.count);
    }
    if (!polished_) polish(0.01);
    if (best_ <= 0) return {};
    return circleAt(kernel_, best_at_);
  }

 private:
  void visit(Vec at, double half, std::uint32_t first, std::uint32_t count) {
    const double f = squares_.valueAt(at, first, count);
    if (f > best_) {
      best_ = f;
      best_at_ = at;
      polished_ = false;
    }
    const double bound = f + half * kRoot2;
    if (bound > best_ + kLargestTolerance) squares_.push(bound, at, half, first, count);
  }

  void polish(double half) {
    polished_ = true;
    double reach = 3 * half + 0.01;
    for (int round = 0; round < 8; ++round) {
      const Rise rise = riseFrom(pullsAt(kernel_, best_at_, best_ + 2 * reach));
      if (!rise.found) return;
      proof_ = rise.proof;
      const Vec to = best_at_ + rise.step;
      const double f = kernel_.valueAt(to).f;
      const double gain = f - best_;
      if (gain <= 0) break;
      best_ = f;
      best_at_ = to;
      if (gain < 1e-9) break;
    }
    if (proofs_.size() < 8) proofs_.push_back(proof_);
  }

  bool isProvenLow(const Cell& cell) const {
    for (const Proof& proof : proofs_)
      if (provenBound(kernel_, proof, cell.at, cell.half) <= best_ + kLargestTolerance) return true;
    return false;
  }

  const Kernel& kernel_;
  CellQueue squares_;
  double best_ = 0;
  Vec best_at_;
  bool polished_ = true;
  Proof proof_;
  std::vector<Proof> proofs_;
};

constexpr double kNearestTolerance = 0.012;
constexpr double kTryHalf = 0.02;  // squares this small without a free middle get the exact step as well
constexpr double kSmallestHalf = 0.0014;  // a square this small is accepted: short by at most 0.002 in

class NearestSearch {
 public:
  NearestSearch(const Kernel& kernel, double radius, Vec near)
      : kernel_(kernel), squares_(kernel), radius_(radius), near_(near) {}

  std::optional<Vec> run() {
    if (kernel_.valueAt(near_).f >= radius_) return near_;
    squares_.coverRoom([this](Vec at, double half, std::uint32_t first, std::uint32_t count) {
      visit(at, half, first, count);
    });
    while (!squares_.empty()) {
      const Cell cell = squares_.pop();
      if (-cell.key >= best_ - kNearestTolerance) break;
      const double q = cell.half / 2;
      for (const Vec d : {Vec{-q, -q}, Vec{q, -q}, Vec{-q, q}, Vec{q, q}})
        visit(cell.at + d, q, cell.first, cell.count);
    }
    return place_;
  }

 private:
  void visit(Vec at, double half, std::uint32_t first, std::uint32_t count) {
    const Vec off{std::max(0.0, std::fabs(at.x - near_.x) - half),
                  std::max(0.0, std::fabs(at.y - near_.y) - half)};
    const double away = norm(off);
    if (away >= best_ - kNearestTolerance) return;
    const double f = squares_.valueAt(at, first, count);
    if (f + half * kRoot2 < radius_) return;
    if (f >= radius_) {
      if (norm(at - near_) < best_) {
        take(at);
        approach(at);
      }
      if (f - half * kRoot2 >= radius_) {
        take({std::clamp(near_.x, at.x - half, at.x + half), std::clamp(near_.y, at.y - half, at.y + half)});
        return;
      }
    } else if (half < kTryHalf) {
      approach(at);
      if (half < kSmallestHalf) {
        take(at);
        return;
      }
    }
    if (away < best_ - kNearestTolerance) squares_.push(-away, at, half, first, count);
  }

  void take(Vec at) {
    const double d = norm(at - near_);
    if (d < best_) best_ = d, place_ = at;
  }

  // Each round moves to the nearest point allowed by the tangents at the present one. Distances are convex,
  // so a point that satisfies the tangents is at least as far from every edge as they say.
  void approach(Vec at) {
    for (int round = 0; round < 6; ++round) {
      const Vec wanted = near_ - at;
      const double length = norm(wanted);
      const Pulls pulls = pullsAt(kernel_, at, radius_ + length + 1);
      const std::optional<Vec> step = nearestStep(pulls, radius_, wanted);
      if (!step) return;
      const Vec to = at + *step;
      const double d = norm(to - near_);
      if (kernel_.valueAt(to).f < radius_ - 1e-7) return;
      const bool settled = norm(*step) < 1e-6;
      at = to;
      if (d < best_) best_ = d, place_ = at;
      if (settled) return;
    }
  }

  const Kernel& kernel_;
  CellQueue squares_;
  double radius_;
  Vec near_;
  double best_ = kInfinity;
  std::optional<Vec> place_;
};

}  // namespace

Squares searchSquares(const Kernel& kernel, double radius) {
  constexpr double kMostHalf = 4;
  Squares found;
  found.radius = radius;
  if (!kernel.has_floor) return found;
  CellQueue queue(kernel);
  const auto visit = [&](Vec at, double half, std::uint32_t first, std::uint32_t count) {
    const double f = queue.valueAt(at, first, count);
    if (f + half * kRoot2 < radius) return;
    if (half > kMostHalf) {
      queue.push(f, at, half, first, count);
      return;
    }
    found.half = half;
    found.all.push_back({at, f});
  };
  queue.coverRoom(visit);
  while (!queue.empty()) {
    const Cell cell = queue.pop();
    const double q = cell.half / 2;
    for (const Vec d : {Vec{-q, -q}, Vec{q, -q}, Vec{-q, q}, Vec{q, q}})
      visit(cell.at + d, q, cell.first, cell.count);
  }
  std::sort(found.all.begin(), found.all.end(), [](const Square& a, const Square& b) { return a.f > b.f; });
  return found;
}

Circle searchLargestCircle(const Kernel& kernel) { return LargestSearch(kernel).run(); }

std::optional<Circle> searchNearestCircle(const Kernel& kernel, double radius, Vec near) {
  if (!kernel.has_floor || !(radius > 0)) return std::nullopt;
  const Circle& largest = kernel.largest();
  const double most = largest.radius.inches();
  if (most < radius - 0.01) return std::nullopt;
  const Length asked = Length::fromInches(radius);
  // Where the circle is only just too large, the largest circle's own size decides how near it can come.
  const std::optional<Vec> at = NearestSearch(kernel, std::min(radius, most), near).run();
  if (!at) return Circle{largest.center, asked};
  return Circle{toPoint(*at), asked};
}

}  // namespace elbowroom::floor_kernel
