// Largest and nearest circle, and the squares where a disc may lie, by best-first halving (cell_queue.h).
//
// Largest: from a square that may hold more than the best so far a climb goes along the limits near by to a
// place that is held from all sides (a summit). A square is done with when its bound is no higher than the
// best: by the nearest edge alone, by a weighted mean of the limits about its middle, or because it lies so
// close about a summit that nothing near is higher. Nearest: squares nearest first; from a free one tangent
// steps lead to the nearest place its limits allow.
#include <algorithm>
#include <array>
#include <cstdint>
#include <limits>
#include <utility>

#include "core/geometry/cell_queue.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr double kInfinity = std::numeric_limits<double>::infinity();

// Weights w >= 0 with sum 1 on up to three limits at a place. Distances are convex, so over any square
// f <= sum w * distance <= its largest corner value. With the weights of a maximum the bound is tight there.
struct Rise {
  int count = 0;  // 0: nothing holds the place
  std::array<Pull, 3> limit;
  std::array<double, 3> weight;
  double value = 0;  // of the weighted distances
  Vec step;          // to where the three are equal, as far as their tangents tell
};

// Linear programme "raise the least distance" solved by its dual: the triple (or opposite pair) of features
// that holds the point from all sides and has the least weighted distance.
Rise riseFrom(const Pulls& pulls) {
  Rise rise;
  double least = kInfinity;
  for (int i = 0; i < pulls.count; ++i) {
    const Pull& a = pulls.item[i];
    if (a.distance >= least) break;  // no weighted mean is less
    for (int j = i + 1; j < pulls.count; ++j) {
      const Pull& b = pulls.item[j];
      if (dot(a.away, b.away) < -1 + 1e-11) {
        const double value = (a.distance + b.distance) / 2;
        if (value < least) {
          least = value;
          rise = {2, {a, b, {}}, {0.5, 0.5, 0}, value, ((b.distance - a.distance) / 2) * a.away};
        }
        continue;
      }
      const double to_c = cross(a.away, b.away);
      for (int k = j + 1; k < pulls.count; ++k) {
        const Pull& c = pulls.item[k];
        const double to_a = cross(b.away, c.away), to_b = cross(c.away, a.away);
        if (to_a * to_c < 0 || to_b * to_c < 0) continue;
        const double sum = to_a + to_b + to_c;
        if (std::fabs(sum) < 1e-9) continue;
        const double wa = to_a / sum, wb = to_b / sum, wc = to_c / sum;
        if (wa < 0 || wb < 0 || wc < 0) continue;
        const double value = wa * a.distance + wb * b.distance + wc * c.distance;
        if (value >= least) continue;
        const Vec ab = a.away - b.away, ac = a.away - c.away;
        const double det = cross(ab, ac);
        if (std::fabs(det) < 1e-9) continue;
        const double p = b.distance - a.distance, q = c.distance - a.distance;
        least = value;
        rise = {
            3, {a, b, c}, {wa, wb, wc}, value, {(p * ac.y - q * ab.y) / det, (q * ab.x - p * ac.x) / det}};
      }
    }
  }
  return rise;
}

// How far three unit vectors reach round the origin: towards any side one of them leans at least so much.
double holdOf(const Rise& rise) {
  double hold = kInfinity;
  for (int i = 0; i < 3; ++i) {
    const Vec a = rise.limit[i].away, b = rise.limit[(i + 1) % 3].away;
    hold = std::min(hold, std::fabs(cross(a, b)) / norm(b - a));
  }
  return hold;
}

// 1 / 2d for the nearest of the limits: away by u a distance grows by at most its slope along u and so much
// times |u|^2.
double bendOf(const Rise& rise) {
  double least = kInfinity;
  for (int i = 0; i < rise.count; ++i) least = std::min(least, rise.limit[i].distance);
  return 1 / (2 * least);
}

// No less than f anywhere in a square about the place of the rise. Away from where the three are equal, one
// of them falls by the hold.
double mostIn(const Kernel& kernel, const Rise& rise, Vec at, double half, double enough) {
  if (rise.count == 3) {
    const double hold = holdOf(rise), step = norm(rise.step), far = kRoot2 * half, bend = bendOf(rise);
    const double most =
        rise.value + std::max(step < far ? step * step * bend : 0, hold * (step - far) + far * far * bend);
    if (most <= enough) return most;
  }
  double most = 0;
  for (int corner = 0; corner < 4; ++corner) {
    const Vec p = at + Vec{corner & 1 ? half : -half, corner & 2 ? half : -half};
    double sum = 0;
    for (int i = 0; i < rise.count; ++i)
      sum += rise.weight[i] *
             std::sqrt(kernel.edges[static_cast<std::size_t>(rise.limit[i].edge)].distanceSquared(p));
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

// From a place to the square.
double away(const Look& look, Vec from) {
  return norm({std::max(0.0, std::fabs(look.at.x - from.x) - look.half),
               std::max(0.0, std::fabs(look.at.y - from.y) - look.half)});
}

constexpr double kProofHalf = 16;  // in larger squares the limits at the middle say little

class LargestSearch {
 public:
  explicit LargestSearch(const Kernel& kernel) : kernel_(kernel), squares_(kernel) {}
  // Only circles that hold all of these places and are larger than `than`; none is larger than `most`.
  LargestSearch(const Kernel& kernel, std::vector<Vec> held, double than, double most)
      : kernel_(kernel), squares_(kernel), held_(std::move(held)), best_(than), most_(most) {}

  Circle run() {
    if (most_ <= enough()) return {};
    const auto visit = [this](const Look& look) {
      offer(look.at, look.f);
      if (!mayHold(look, most_)) return;
      const double bound = std::min(most_, squares_.most(look));
      if (bound > enough() && mayHold(look, bound)) squares_.push(bound);
    };
    squares_.coverRoom(visit);
    Cell cell;
    while (!squares_.empty()) {
      const bool free = squares_.pop(cell);
      if (cell.key <= enough()) break;
      if (free && !provenLow(cell)) squares_.quarter(cell, visit);
    }
    if (!found_) return {};
    return circleAt(kernel_, best_at_);
  }

 private:
  // A place from which no step leads up: within `radius` of it no circle is larger.
  struct Summit {
    Vec at;
    double radius = 0;
    bool covers(Vec middle, double half) const {
      const Vec far{std::fabs(middle.x - at.x) + half, std::fabs(middle.y - at.y) + half};
      return dot(far, far) <= radius * radius;
    }
  };

  double enough() const { return best_ + kLargestTolerance; }
  bool holds(Vec at, double f) const {
    return std::all_of(held_.begin(), held_.end(), [&](Vec p) { return norm(p - at) <= f; });
  }
  bool mayHold(const Look& look, double bound) const {
    return std::all_of(held_.begin(), held_.end(), [&](Vec p) { return away(look, p) <= bound; });
  }
  bool offer(Vec at, double f) {
    if (f <= best_ || !holds(at, f)) return false;
    best_ = f, best_at_ = at, found_ = true;
    return true;
  }

  bool provenLow(Cell& cell) {
    const auto covered = [&](Vec middle, double half) {
      const auto by = [&](int summit) {
        return summit >= 0 && summits_[static_cast<std::size_t>(summit)].covers(middle, half);
      };
      return by(best_summit_) || by(cell.mark);
    };
    const Vec at = cell.look.at;
    const double half = cell.look.half;
    if (covered(at, half)) return true;
    if (half > kProofHalf) return false;
    const Rise rise = riseFrom(squares_.pullsOf(cell));
    if (rise.count == 0) return false;
    if (mostIn(kernel_, rise, at, half, enough()) <= enough()) return true;
    // Worth a climb where something higher may be that is not known.
    const double step = norm(rise.step), there = rise.value + step * step * bendOf(rise);
    if (cell.look.f <= 0 || step > 2 * half || there <= enough() || covered(at + rise.step, 0) ||
        !holds(at + rise.step, there))
      return false;
    cell.mark = climb(at, cell.look.f);
    return covered(at, half);
  }

  // Uphill as the limits near by tell, to a place that is held from all sides.
  int climb(Vec at, double f) {
    constexpr int kSteps = 20;
    constexpr double kReach = 8;
    double longest = kReach;
    Cell around;
    Rise rise;
    for (int i = 0; i < kSteps; ++i) {
      if (i == 0 || norm(at - around.look.at) + longest > kReach) around = squares_.about(at, f + 2 * kReach);
      const Pulls pulls = squares_.pullsOf(around, at);
      rise = riseFrom(pulls);
      Vec step = rise.count > 0 ? rise.step : longest * pulls.item[0].away;
      const double length = norm(step);
      if (length > longest) step = (longest / length) * step;
      const double there = squares_.valueIn(around, at + step);
      if (there > f) {
        const bool settled = there - f < 1e-9;
        at = at + step, f = there;
        if (settled) break;
      } else {
        longest = std::min(longest, length) / 4;
        if (longest < 1e-7) break;
      }
    }
    summits_.push_back({at, 0});
    // Touched by three, it is held: away by u one comes nearer by hold |u| - |u|^2 / 2f.
    bool touched = rise.count == 3;
    for (int i = 0; i < 3 && touched; ++i) touched = rise.limit[i].distance <= f + kLargestTolerance / 2;
    if (touched) summits_.back().radius = 2 * holdOf(rise) * f;
    const int summit = static_cast<int>(summits_.size()) - 1;
    if (offer(at, f)) best_summit_ = summit;
    // One that does not count may have others about it that do.
    if (f > enough()) summits_.back().radius = 0;
    return summit;
  }

  const Kernel& kernel_;
  CellQueue squares_;
  std::vector<Vec> held_;
  double best_ = 0;
  double most_ = kInfinity;
  bool found_ = false;
  Vec best_at_;
  std::vector<Summit> summits_;
  int best_summit_ = -1;
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
    const auto look = [this](const Look& look) { visit(look); };
    squares_.coverRoom(look);
    Cell cell;
    while (!squares_.empty()) {
      const bool free = squares_.pop(cell);
      if (-cell.key >= best_ - kNearestTolerance) break;
      if (free) squares_.quarter(cell, look);
    }
    return place_;
  }

 private:
  void visit(const Look& look) {
    const Vec at = look.at;
    const double half = look.half, f = look.f;
    const double least = away(look, near_);
    if (least >= best_ - kNearestTolerance) return;
    if (squares_.most(look) < radius_) return;
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
    if (least < best_ - kNearestTolerance) squares_.push(-least);
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
      const Cell around = squares_.about(at, radius_ + length + 1);
      const std::optional<Vec> step = nearestStep(squares_.pullsOf(around), radius_, wanted);
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
  const auto visit = [&](const Look& look) {
    if (look.f + look.half * kRoot2 < radius) return;
    if (look.half > kMostHalf) return queue.push(look.f);
    found.half = look.half;
    found.all.push_back({look.at, look.f});
  };
  queue.coverRoom(visit);
  Cell cell;
  while (!queue.empty())
    if (queue.pop(cell)) queue.quarter(cell, visit);
  std::sort(found.all.begin(), found.all.end(), [](const Square& a, const Square& b) { return a.f > b.f; });
  return found;
}

Circle searchLargestCircle(const Kernel& kernel) {
  return kernel.has_floor ? LargestSearch(kernel).run() : Circle{};
}

Circle searchLargestCircleHolding(const Kernel& kernel, Vec p, Vec q, double than) {
  if (!kernel.has_floor) return {};
  // Before the search: two at a time would share their queue.
  const double most = kernel.largest().radius.inches() + kLargestTolerance;
  return LargestSearch(kernel, {p, q}, than, most).run();
}

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
