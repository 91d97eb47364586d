#include "core/geometry/sight.h"

#include <algorithm>
#include <limits>

#include "core/geometry/kernel.h"

namespace elbowroom {

namespace {

using kernel::Vec;

// The plan as the eye has it: x towards the middle of the opening. A ray is its slope y/x.
class View {
 public:
  View(Point eye, Segment opening) : eye_(kernel::toInches(eye)) {
    const Vec a = kernel::toInches(opening.a), b = kernel::toInches(opening.b);
    const Vec middle = 0.5 * (a + b) - eye_;
    along_ = (1 / kernel::norm(middle)) * middle;
    const double s = slope(from(a)), t = slope(from(b));
    low_ = std::min(s, t);
    high_ = std::max(s, t);
    near_low_ = s < t ? opening.a : opening.b;
    near_high_ = s < t ? opening.b : opening.a;
  }

  Vec from(Vec p) const {
    const Vec d = p - eye_;
    return {dot(d, along_), cross(along_, d)};
  }
  Vec from(Point p) const { return from(kernel::toInches(p)); }
  Point at(double slope, double x) const {
    const Vec aside{-along_.y, along_.x};
    return kernel::toPoint(eye_ + x * along_ + (slope * x) * aside);
  }
  static double slope(Vec p) { return p.y / p.x; }
  double low() const { return low_; }
  double high() const { return high_; }
  Point nearLow() const { return near_low_; }
  Point nearHigh() const { return near_high_; }

 private:
  Vec eye_, along_;
  double low_, high_;
  Point near_low_, near_high_;
};

// A segment before the eye, seen from slope `low` to slope `high`.
struct Edge {
  Vec a, d;
  double low, high;
  bool thing;
  double x(double slope) const {
    const double across = d.y - slope * d.x;
    return across == 0 ? a.x : a.x + (slope * a.x - a.y) / across * d.x;
  }
};

constexpr double kBeforeTheEye = 1e-6, kThin = 1e-12, kSame = 1e-9;

void add(std::vector<Edge>& edges, const View& view, Point p, Point q, bool thing) {
  Vec a = view.from(p), b = view.from(q);
  if (a.x < kBeforeTheEye && b.x < kBeforeTheEye) return;
  if (a.x < kBeforeTheEye) a = b + ((b.x - kBeforeTheEye) / (b.x - a.x)) * (a - b);
  if (b.x < kBeforeTheEye) b = a + ((a.x - kBeforeTheEye) / (a.x - b.x)) * (b - a);
  const double s = View::slope(a), t = View::slope(b);
  const Edge edge{a, b - a, std::min(s, t), std::max(s, t), thing};
  if (edge.high - edge.low > kThin) edges.push_back(edge);  // edge-on it hides nothing
}

// Calls found(low, high, edge or nullptr) for every stretch of rays, from low to high, with the edge that
// ends it.
template <typename Found>
class Sweep {
 public:
  Sweep(std::vector<Edge> edges, Found found) : edges_(std::move(edges)), found_(found) {}

  void run(double low, double high) {
    std::sort(edges_.begin(), edges_.end(), [](const Edge& a, const Edge& b) { return a.low < b.low; });
    std::vector<double> cuts{low, high};
    for (const Edge& e : edges_)
      for (const double cut : {e.low, e.high})
        if (cut > low && cut < high) cuts.push_back(cut);
    std::sort(cuts.begin(), cuts.end());
    std::size_t next = 0;
    for (std::size_t i = 0; i + 1 < cuts.size(); ++i) {
      const double a = cuts[i], b = cuts[i + 1];
      while (next < edges_.size() && edges_[next].low <= a) active_.push_back(&edges_[next++]);
      active_.erase(
          std::remove_if(active_.begin(), active_.end(), [&](const Edge* e) { return e->high <= a; }),
          active_.end());
      if (b - a > kThin) stretch(a, b, 0);
    }
  }

 private:
  // All active edges span a..b. If another edge is nearer at an end than the one nearest in the middle, the
  // two cross in between.
  void stretch(double a, double b, int depth) {
    const double middle = (a + b) / 2;
    const Edge* nearest = nullptr;
    for (const Edge* e : active_)
      if (nearest == nullptr || e->x(middle) < nearest->x(middle)) nearest = e;
    if (nearest != nullptr && depth < 40) {
      for (const Edge* e : active_) {
        for (const double end : {a, b}) {
          if (e->x(end) >= nearest->x(end) - kSame) continue;
          const double cut = crossing(*e, *nearest);
          if (cut - a <= kThin || b - cut <= kThin) continue;
          stretch(a, cut, depth + 1);
          stretch(cut, b, depth + 1);
          return;
        }
      }
    }
    found_(a, b, nearest);
  }
  static double crossing(const Edge& e, const Edge& f) {
    const double along = cross(f.a - e.a, f.d) / cross(e.d, f.d);
    return View::slope(e.a + along * e.d);
  }

  std::vector<Edge> edges_;
  std::vector<const Edge*> active_;
  Found found_;
};

template <typename Found>
void sweep(std::vector<Edge> edges, double low, double high, Found found) {
  Sweep<Found>(std::move(edges), found).run(low, high);
}

std::vector<Edge> edgesOf(const View& view, const std::vector<Segment>& opaque) {
  std::vector<Edge> edges;
  for (const Segment& s : opaque) add(edges, view, s.a, s.b, false);
  return edges;
}

}  // namespace

Outline seenThrough(Point eye, Segment opening, const std::vector<Segment>& opaque, Length reach) {
  const View view(eye, opening);
  Outline ring{view.nearLow()};
  const auto put = [&](Point p) {
    if (ring.back() != p) ring.push_back(p);
  };
  sweep(edgesOf(view, opaque), view.low(), view.high(), [&](double a, double b, const Edge* edge) {
    put(view.at(a, edge ? edge->x(a) : reach.inches()));
    put(view.at(b, edge ? edge->x(b) : reach.inches()));
  });
  put(view.nearHigh());
  return ring;
}

Seen seenOf(const Outline& thing, Point eye, Segment opening, const std::vector<Segment>& opaque) {
  const View view(eye, opening);
  std::vector<Edge> edges;
  for (std::size_t i = 0; i < thing.size(); ++i)
    add(edges, view, thing[i], thing[(i + 1) % thing.size()], true);
  Seen seen{0, eye};
  if (edges.empty()) return seen;
  double low = std::numeric_limits<double>::max(), high = -low;
  for (const Edge& e : edges) {
    low = std::min(low, e.low);
    high = std::max(high, e.high);
  }
  const double whole = std::atan(high) - std::atan(low);
  for (const Edge& e : edgesOf(view, opaque)) edges.push_back(e);
  const double from = std::max(low, view.low()), to = std::min(high, view.high());
  if (to - from <= kThin) return seen;
  double widest = 0;
  sweep(std::move(edges), from, to, [&](double a, double b, const Edge* edge) {
    if (edge == nullptr || !edge->thing) return;
    const double angle = std::atan(b) - std::atan(a);
    seen.share += angle / whole;
    if (angle <= widest) return;
    widest = angle;
    seen.at = view.at((a + b) / 2, edge->x((a + b) / 2));
  });
  return seen;
}

}  // namespace elbowroom
