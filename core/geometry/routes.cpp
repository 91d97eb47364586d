#include "core/geometry/routes.h"

#include <algorithm>
#include <limits>
#include <queue>
#include <utility>

#include "core/geometry/free_floor_kernel.h"
#include "core/geometry/ridge_graph.h"
#include "core/geometry/widest_ways.h"

namespace elbowroom {

using namespace floor_kernel;

namespace {

constexpr double kOnRidge = 1e-3;

// A stop inside a ridge edge, where discs of one of the given points begin or end.
struct Stop {
  double s;
  int node;
};

struct Pinch {
  double radius = 0;
  Vec at;
};

struct Link {
  int to;
  Pinch pinch;
};

// Where a concave function is greatest.
template <typename Function>
double topOf(Function f, double low, double high) {
  for (int k = 0; k < 60; ++k) {
    const double third = (high - low) / 3;
    if (f(low + third) < f(high - third))
      low += third;
    else
      high -= third;
  }
  return (low + high) / 2;
}
// The same for one at most quadratic, by three of its values.
template <typename Function>
double topOfQuadratic(Function f, double from, double to) {
  const double a = f(from), m = f((from + to) / 2), b = f(to), bend = a - 2 * m + b;
  if (bend >= 0) return a > b ? from : to;
  return from + (to - from) * std::clamp(0.5 + (a - b) / (4 * bend), 0.0, 1.0);
}

// The ridges with stops for every given point.
class Ways {
 public:
  Ways(const floor_kernel::Kernel& kernel, const RidgeGraph& graph)
      : kernel_(kernel), graph_(graph), nodes_(graph.nodes), stops_(graph.edges.size()) {}

  // Nodes at which a free disc contains p. Shrinking such a disc while sliding it towards p keeps it free and
  // keeps p inside, so the point itself never limits the width.
  std::vector<int> attach(Point point) {
    std::vector<int> nodes;
    Vec p = floor_kernel::toInches(point);
    Value value = kernel_.valueAt(p);
    if (value.f < 0.005) {
      const std::optional<Circle> moved = searchNearestCircle(kernel_, 0.01, p);
      if (!moved) return nodes;
      p = floor_kernel::toInches(moved->center);
      value = kernel_.valueAt(p);
      if (!(value.f > 0)) return nodes;
    }
    const int vertices = static_cast<int>(graph_.nodes.size());
    for (int i = 0; i < vertices; ++i)
      if (norm(nodes_[i].at - p) <= nodes_[i].f) nodes.push_back(i);
    attachInsideEdges(p, nodes);
    attachUphill(p, value, nodes);
    return nodes;
  }

  // Widest way from any of the sources to every node.
  std::vector<Pinch> widest(const std::vector<int>& sources) const {
    const std::vector<std::vector<Link>> links = allLinks();
    std::vector<Pinch> best(nodes_.size());
    using Entry = std::pair<double, int>;
    std::priority_queue<Entry> queue;
    const auto offer = [&](int node, Pinch pinch) {
      if (pinch.radius <= best[node].radius) return;
      best[node] = pinch;
      queue.push({pinch.radius, node});
    };
    for (const int i : sources) offer(i, {nodes_[i].f, nodes_[i].at});
    while (!queue.empty()) {
      const auto [radius, node] = queue.top();
      queue.pop();
      if (radius < best[node].radius) continue;
      for (const Link& link : links[node])
        offer(link.to, link.pinch.radius < radius ? link.pinch : best[node]);
    }
    return best;
  }

 private:
  int addStop(std::size_t e, double s) {
    const RidgeEdge& edge = graph_.edges[e];
    const Vec at = edge.at(s);
    nodes_.push_back({at, edge.radius(at)});
    const int node = static_cast<int>(nodes_.size()) - 1;
    stops_[e].push_back({s, node});
    return node;
  }

  // Where along an edge the free discs begin or cease to contain p.
  void attachInsideEdges(Vec p, std::vector<int>& nodes) {
    for (std::size_t e = 0; e < graph_.edges.size(); ++e) {
      const RidgeEdge& edge = graph_.edges[e];
      const RidgeNode &from = nodes_[edge.from], &to = nodes_[edge.to];
      const double longest = 2 * norm(to.at - from.at) + std::fabs(to.f - from.f);
      if (norm(from.at - p) - from.f > 2 * longest) continue;
      // Against a point site |c - site|^2 - |c - p|^2 is linear in c, so at most quadratic in s; between two
      // edges radius less distance is concave. Either way the ends and one top show every change of sign.
      const int corner = edge.site_a[0].x == edge.site_b[0].x && edge.site_a[0].y == edge.site_b[0].y   ? 0
                         : edge.site_a[1].x == edge.site_b[1].x && edge.site_a[1].y == edge.site_b[1].y ? 1
                                                                                                        : -1;
      const auto spare = [&](double s) {
        const Vec at = edge.at(s);
        if (corner < 0) return edge.radius(at) - norm(at - p);
        const Vec to_site = at - edge.site_a[corner], to_p = at - p;
        return dot(to_site, to_site) - dot(to_p, to_p);
      };
      const auto addChange = [&](double in, double out) {
        for (int k = 0; k < 50; ++k) {
          const double middle = (in + out) / 2;
          (spare(middle) >= 0 ? in : out) = middle;
        }
        nodes.push_back(addStop(e, in));
      };
      const double at_from = spare(edge.s_from), at_to = spare(edge.s_to);
      if (at_from >= 0 && at_to >= 0) continue;
      if (at_from >= 0 || at_to >= 0) {
        addChange(at_from >= 0 ? edge.s_from : edge.s_to, at_from >= 0 ? edge.s_to : edge.s_from);
        continue;
      }
      // Radius and distance change by at most the way gone.
      if (corner < 0 && (at_from + at_to) / 2 + norm(to.at - from.at) < 0) continue;
      const double top = corner < 0 ? topOf(spare, edge.s_from, edge.s_to)
                                    : topOfQuadratic(spare, edge.s_from, edge.s_to);
      if (spare(top) < 0) continue;
      addChange(top, edge.s_from);
      addChange(top, edge.s_to);
    }
  }

  // Straight away from the nearest boundary up to the ridge.
  void attachUphill(Vec p, Value value, std::vector<int>& nodes) {
    const Vec foot = kernel_.edges[value.edge].nearest(p);
    const Vec away = (1 / value.f) * (p - foot);
    double low = 0, high = 1e5;
    for (int k = 0; k < 70; ++k) {
      const double middle = (low + high) / 2;
      (kernel_.valueAt(p + middle * away).f >= value.f + middle - 1e-8 ? low : high) = middle;
    }
    const Vec top = p + low * away;
    const double f = value.f + low;
    for (std::size_t e = 0; e < graph_.edges.size(); ++e) {
      const RidgeEdge& edge = graph_.edges[e];
      if (std::fabs(edge.distanceToSite(0, top) - f) > kOnRidge) continue;
      if (std::fabs(edge.distanceToSite(1, top) - f) > kOnRidge) continue;
      const double least = std::fmin(edge.s_from, edge.s_to), most = std::fmax(edge.s_from, edge.s_to);
      const double s = edge.parameter(top);
      if (s < least - kOnRidge || s > most + kOnRidge) continue;
      const double within = std::clamp(s, least, most);
      if (norm(edge.at(within) - top) > 10 * kOnRidge) continue;
      nodes.push_back(addStop(e, within));
    }
  }

  Pinch between(const RidgeEdge& edge, Stop a, Stop b) const {
    const RidgeNode &from = nodes_[a.node], &to = nodes_[b.node];
    Pinch pinch = from.f < to.f ? Pinch{from.f, from.at} : Pinch{to.f, to.at};
    if (edge.even) return {pinch.radius, 0.5 * (from.at + to.at)};
    if (edge.saddle && edge.saddle->s >= std::fmin(a.s, b.s) && edge.saddle->s <= std::fmax(a.s, b.s) &&
        edge.saddle->f <= pinch.radius) {
      pinch = {edge.saddle->f, edge.saddle->at};
    }
    return pinch;
  }

  std::vector<std::vector<Link>> allLinks() const {
    std::vector<std::vector<Link>> links(nodes_.size());
    std::vector<Stop> row;
    for (std::size_t e = 0; e < graph_.edges.size(); ++e) {
      const RidgeEdge& edge = graph_.edges[e];
      row = stops_[e];
      const double sign = edge.s_from <= edge.s_to ? 1 : -1;
      std::sort(row.begin(), row.end(), [&](Stop a, Stop b) { return sign * a.s < sign * b.s; });
      row.insert(row.begin(), {edge.s_from, edge.from});
      row.push_back({edge.s_to, edge.to});
      for (std::size_t i = 0; i + 1 < row.size(); ++i) {
        const Pinch pinch = between(edge, row[i], row[i + 1]);
        links[row[i].node].push_back({row[i + 1].node, pinch});
        links[row[i + 1].node].push_back({row[i].node, pinch});
      }
    }
    return links;
  }

  const floor_kernel::Kernel& kernel_;
  const RidgeGraph& graph_;
  std::vector<RidgeNode> nodes_;  // of the diagram itself, then the stops
  std::vector<std::vector<Stop>> stops_;
};

// The two boundary points that pinch at `at`, measured on the raw outlines: the nearest one, and the nearest
// of those on the other side.
Route routeThrough(const floor_kernel::Kernel& kernel, Pinch pinch) {
  Route route;
  Vec at = pinch.at;
  Vec sides[2];
  double width = 2 * pinch.radius;
  for (int round = 0; round < 3; ++round) {
    const Value value = kernel.valueAt(at);
    if (!(value.f > 0)) break;
    sides[0] = kernel.edges[value.edge].nearest(at);
    const Vec away = (1 / value.f) * (at - sides[0]);
    double nearest = std::numeric_limits<double>::infinity(), facing = 0;
    for (const Edge& e : kernel.edges) {
      const Vec q = e.nearest(at);
      const double d = norm(q - at), turned = d > 0 ? dot(q - at, away) / d : -1;
      if (d < value.f + 0.01 && turned > facing) facing = turned, nearest = d, sides[1] = q;
    }
    if (facing > 1 - 1e-6) {  // a gate between two opposite points: its middle to the last digit
      width = value.f + nearest;
      at = 0.5 * (sides[0] + sides[1]);
    } else {
      width = 2 * value.f;
      if (facing <= 0) sides[1] = at + at - sides[0];
      break;
    }
  }
  route.reachable = width > 0;
  route.width = Length::fromInches(width);
  route.narrowest = toPoint(at);
  route.sides = {toPoint(sides[0]), toPoint(sides[1])};
  return route;
}

}  // namespace

struct WidestWays::Floor {
  floor_kernel::Kernel kernel;
  RidgeGraph ridges;

  Floor(const Outline& room, const std::vector<Outline>& obstacles)
      : kernel(room, obstacles), ridges(ridgesOf(kernel)) {}
};

WidestWays::WidestWays(const Outline& room, const std::vector<Outline>& obstacles)
    : floor_(std::make_shared<const Floor>(room, obstacles)) {}

std::vector<Route> WidestWays::from(Point start, const std::vector<Point>& targets) const {
  std::vector<Route> routes(targets.size());
  const floor_kernel::Kernel& kernel = floor_->kernel;
  if (!kernel.has_floor || targets.empty()) return routes;
  Ways ways(kernel, floor_->ridges);
  const std::vector<int> sources = ways.attach(start);
  std::vector<std::vector<int>> ends;
  for (const Point& target : targets) ends.push_back(ways.attach(target));
  const std::vector<Pinch> widest = ways.widest(sources);
  for (std::size_t i = 0; i < targets.size(); ++i) {
    Pinch best;
    for (const int node : ends[i])
      if (widest[node].radius > best.radius) best = widest[node];
    if (best.radius > 0) routes[i] = routeThrough(kernel, best);
  }
  return routes;
}

std::vector<Route> widestRoutes(const Outline& room, const std::vector<Outline>& obstacles, Point start,
                                const std::vector<Point>& targets) {
  return WidestWays(room, obstacles).from(start, targets);
}

}  // namespace elbowroom
