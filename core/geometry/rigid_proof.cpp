#include <algorithm>
#include <array>
#include <cmath>

#include "core/geometry/rigid_search.h"

namespace elbowroom::floor_kernel {
namespace {

constexpr int kMost = 24, kRounds = 4, kPasses = 8;
constexpr double kRoot2 = 1.4142135623730951;

// An upper bound of how far one blocker keeps off one piece: value at the middle of the box plus slopes times
// the motion in halves of the box. Negative everywhere: the blocker reaches in.
struct Limit {
  double value;    // with never_dropped and the second order over the box counted in
  double x, y, t;  // slopes per half box
  double inverse;  // 1 / squared length of the slopes
  double force = 0;
};

class Limits {
 public:
  Limits(const PoseBox& box, double never_dropped)
      : box_(box),
        never_(never_dropped),
        turns_(box.turns),
        far_(norm(box.half)),
        bend_(turns_.spread * turns_.spread / 2) {}

  void add(double value, Vec away, double lever) {
    Limit limit{value, away.x * box_.half.x, away.y * box_.half.y, lever * turns_.spread, 0};
    const double squared = limit.x * limit.x + limit.y * limit.y + limit.t * limit.t;
    if (!(squared > 0)) return;
    // Nowhere in the box does it say anything.
    if (value > std::fabs(limit.x) + std::fabs(limit.y) + std::fabs(limit.t)) return;
    limit.inverse = 1 / squared;
    if (count_ < kMost) {
      all_[count_++] = limit;
      return;
    }
    const auto slackest = std::max_element(all_.begin(), all_.end(),
                                           [](const Limit& a, const Limit& b) { return a.value < b.value; });
    if (limit.value < slackest->value) *slackest = limit;
  }

  // Points of the blocker against the sides of the piece. A point that lies deep behind the other three sides
  // at every pose of the box is in the piece as soon as it is behind the fourth.
  void addSides(const Blocker& edge, const Piece& piece) {
    const Vec u = turns_.axes.first(piece.diagonal), v = turns_.axes.second(piece.diagonal);
    const Vec ra = edge.a - box_.at;
    const Vec a{dot(ra, u), dot(ra, v)}, d{dot(edge.d, u), dot(edge.d, v)};
    for (int side = 0; side < 4; ++side) {
      const bool x_side = side < 2;
      const double sign = side & 1 ? -1 : 1;
      const double reach =
          x_side ? (side & 1 ? -piece.low.x : piece.high.x) : (side & 1 ? -piece.low.y : piece.high.y);
      const double deep = x_side ? piece.high.x - piece.low.x : piece.high.y - piece.low.y;
      // How far the piece's own points move; what lies across it moves no farther.
      const double radius = piece.farthest + 2 * far_;
      const double moves = far_ + turns_.chord * radius, inset = never_ + moves;
      const double low = (x_side ? piece.low.y : piece.low.x) + inset,
                   high = (x_side ? piece.high.y : piece.high.x) - inset;
      if (low >= high) continue;
      double from = 0, to = 1;
      const double p = x_side ? a.y : a.x, dp = x_side ? d.y : d.x;
      const double h = sign * (x_side ? a.x : a.y), dh = sign * (x_side ? d.x : d.y);
      const auto keep = [&](double at, double rate, double least) {  // at + t * rate >= least
        if (rate == 0) {
          if (at < least) from = 1, to = 0;
        } else if (rate > 0) {
          from = std::max(from, (least - at) / rate);
        } else {
          to = std::min(to, (least - at) / rate);
        }
      };
      keep(p, dp, low);
      keep(-p, -dp, -high);
      keep(-h, -dh, -(reach + moves));    // not out of reach
      keep(h, dh, reach - deep + inset);  // not through the far side
      if (from > to) continue;
      const Vec outward = sign * (x_side ? u : v);
      for (const double t : {from, to}) {
        const Vec q = ra + t * edge.d;
        const double gap = h + t * dh - reach, arm = norm(q);
        if (arm > radius) continue;
        add(gap + never_ + arm * bend_ + far_ * turns_.spread, -1.0 * outward,
            dot(Vec{-outward.y, outward.x}, q));
        if (to - from < 1e-9) break;
      }
    }
  }

  // Corners of the piece against the blocker's line. Where a corner lies beyond it, the line crosses the
  // diagonal into that corner; that crossing must lie on the blocker at every pose of the box.
  void addCorners(const Blocker& edge, const Piece& piece) {
    if (edge.inverse == 0) return;
    const Vec u = turns_.axes.first(piece.diagonal), v = turns_.axes.second(piece.diagonal);
    const Vec along = edge.per_length * edge.d;
    Vec normal{-along.y, along.x};
    const Vec ra = edge.a - box_.at;
    const Vec middle = 0.5 * (piece.low + piece.high);
    if (dot(normal, middle.x * u + middle.y * v - ra) < 0) normal = -1.0 * normal;
    const double length = dot(along, edge.d);
    const double narrow = std::min(piece.high.x - piece.low.x, piece.high.y - piece.low.y);
    for (const Vec c :
         {piece.low, Vec{piece.high.x, piece.low.y}, piece.high, Vec{piece.low.x, piece.high.y}}) {
      const Vec corner = c.x * u + c.y * v;
      const double arm = norm(corner), moves = far_ + turns_.chord * arm;
      const double gap = dot(normal, corner - ra);
      if (gap > moves) continue;
      const double deepest = moves - gap;  // at any pose of the box
      // The diagonal's direction inwards leans at least 0 and at most 45 degrees off the normal only where
      // both sides at the corner face the line.
      const double nx = dot(normal, u) * (c.x > middle.x ? -1 : 1),
                   ny = dot(normal, v) * (c.y > middle.y ? -1 : 1);
      if (nx - turns_.chord < 0 || ny - turns_.chord < 0) continue;
      const double inward = nx + ny - 2 * turns_.chord;
      if (inward <= 0.5) continue;
      const double step = deepest / inward;  // along both sides
      if (step + never_ > narrow) continue;
      const double s = dot(along, corner - ra), margin = moves + kRoot2 * step;
      if (s - margin < 0 || s + margin > length) continue;
      add(gap + never_ * kRoot2 + arm * bend_, normal, dot(normal, Vec{-corner.y, corner.x}));
    }
  }

  void addDistance(Vec target, double within) {
    const Vec off = box_.at - target;
    const double d = norm(off);
    if (d > 0) add(within - d, (-1 / d) * off, 0);
  }

  // Looks for weights by Hildreth's passes towards the least motion that would keep all limits: where there
  // is none within the box, the forces that build up are such weights. Any weights make a valid proof.
  bool contradict() {
    if (count_ < 2) return false;
    double x = 0, y = 0, t = 0;
    for (int round = 0; round < kRounds; ++round) {
      double moved = 0;
      for (int pass = 0; pass < kPasses; ++pass) {
        moved = 0;
        for (int i = 0; i < count_; ++i) {
          Limit& l = all_[i];
          const double lack = -l.value - (l.x * x + l.y * y + l.t * t);
          const double change = std::max(-l.force, lack * l.inverse);
          if (change == 0) continue;
          l.force += change;
          x += change * l.x, y += change * l.y, t += change * l.t;
          moved = std::max(moved, std::fabs(lack));
        }
        if (moved < 1e-6) break;
      }
      double sum = 0;
      for (int i = 0; i < count_; ++i) sum += all_[i].force * all_[i].value;
      if (sum + std::fabs(x) + std::fabs(y) + std::fabs(t) < -1e-12) return true;
      if (moved < 1e-6) return false;
    }
    return false;
  }

 private:
  const PoseBox& box_;
  double never_;
  const TurnRange& turns_;
  double far_, bend_;
  std::array<Limit, kMost> all_;
  int count_ = 0;
};

}  // namespace

bool provenFull(const Surroundings& around, const RigidPattern& pattern, const std::uint32_t* list,
                std::size_t count, const PoseBox& box, const Vec* target, double within,
                double never_dropped) {
  Limits limits(box, never_dropped);
  for (std::size_t i = 0; i < count; ++i) {
    const Blocker& edge = around.blockers[list[i]];
    for (const Piece& piece : pattern.pieces) {
      if (!(piece.layers & edge.layer)) continue;
      limits.addSides(edge, piece);
      limits.addCorners(edge, piece);
    }
  }
  if (target) limits.addDistance(*target, within);
  return limits.contradict();
}

}  // namespace elbowroom::floor_kernel
