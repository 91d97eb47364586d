#include "core/geometry/ridge_graph.h"

#include <boost/polygon/voronoi.hpp>
#include <algorithm>
#include <cmath>

#include "core/geometry/noding.h"
#include "core/geometry/wide_int.h"

namespace boost::polygon {
template <>
struct geometry_concept<elbowroom::floor_kernel::GridPoint> {
  using type = point_concept;
};
template <>
struct point_traits<elbowroom::floor_kernel::GridPoint> {
  using coordinate_type = std::int32_t;
  static coordinate_type get(const elbowroom::floor_kernel::GridPoint& p, orientation_2d o) {
    return o == HORIZONTAL ? p.x : p.y;
  }
};
template <>
struct geometry_concept<elbowroom::floor_kernel::GridSegment> {
  using type = segment_concept;
};
template <>
struct segment_traits<elbowroom::floor_kernel::GridSegment> {
  using coordinate_type = std::int32_t;
  using point_type = elbowroom::floor_kernel::GridPoint;
  static point_type get(const elbowroom::floor_kernel::GridSegment& s, direction_1d d) {
    return d.to_int() ? s.b : s.a;
  }
};
}  // namespace boost::polygon

namespace elbowroom::floor_kernel {
namespace {

using Diagram = boost::polygon::voronoi_diagram<double>;

// The traits of the builder for coordinates of 32 bits, with numbers of our own where it counts exactly.
struct ToReal {
  template <typename T>
  double operator()(const T& number) const {
    return static_cast<double>(number);
  }
  double operator()(const WideInt& number) const { return static_cast<double>(number.value()); }
  double operator()(WideReal number) const { return static_cast<double>(number.v); }
};
struct ToWideReal {
  WideReal operator()(const WideInt& number) const { return {number.value()}; }
};
struct ExactTraits : boost::polygon::detail::voronoi_ctype_traits<std::int32_t> {
  using big_int_type = WideInt;
  using efpt_type = WideReal;
  using to_fpt_converter_type = ToReal;
  using to_efpt_converter_type = ToWideReal;
};

constexpr double kNoFloor = 1e-4;  // nodes nearer to a boundary than this are on it

struct Site {
  Vec a, b;
  bool point;
};

Site siteOf(const Diagram::cell_type& cell, const std::vector<GridSegment>& segments) {
  const GridSegment& s = segments[cell.source_index()];
  if (!cell.contains_point()) return {toInches(s.a), toInches(s.b), false};
  const bool low = cell.source_category() == boost::polygon::SOURCE_CATEGORY_SEGMENT_START_POINT;
  const Vec p = toInches(low ? s.a : s.b);
  return {p, p, true};
}

void setSaddle(RidgeEdge& edge, double s) {
  const double low = std::min(edge.s_from, edge.s_to), high = std::max(edge.s_from, edge.s_to);
  if (s < low || s > high) return;
  const Vec at = edge.at(s);
  edge.saddle = Saddle{s, at, edge.radius(at)};
}

RidgeEdge ridgeBetween(Site p, Site q, Vec from, Vec to) {
  RidgeEdge edge;
  edge.site_a[0] = p.a, edge.site_b[0] = p.b;
  edge.site_a[1] = q.a, edge.site_b[1] = q.b;
  const auto straight = [&] {
    edge.start = from;
    const double length = norm(to - from);
    edge.along = length > 0 ? (1 / length) * (to - from) : Vec{1, 0};
    edge.s_from = 0;
    edge.s_to = length;
  };
  if (p.point && q.point) {
    straight();
    setSaddle(edge, edge.parameter(0.5 * (p.a + q.a)));
  } else if (!p.point && !q.point) {
    straight();
    const Vec u = p.b - p.a, v = q.b - q.a;
    edge.even = std::fabs(cross(u, v)) <= 1e-9 * norm(u) * norm(v);
    if (edge.even) setSaddle(edge, edge.s_to / 2);
  } else {
    const Vec focus = p.point ? p.a : q.a;
    const Site& line = p.point ? q : p;
    const Vec d = line.b - line.a;
    edge.along = (1 / norm(d)) * d;
    edge.up = {-edge.along.y, edge.along.x};
    double height = dot(focus - line.a, edge.up);
    if (height < 0) height = -height, edge.up = -1.0 * edge.up;
    edge.start = line.a;
    edge.s_from = edge.parameter(from);
    edge.s_to = edge.parameter(to);
    if (height < 1e-9) {
      straight();  // the focus on the line itself: a perpendicular
    } else {
      edge.height = height;
      edge.focus_s = edge.parameter(focus);
      setSaddle(edge, edge.focus_s);
    }
  }
  return edge;
}

// Whether free floor lies at a side of the segment, which nothing crosses. A slit too narrow to pass is none.
bool boundsFloor(const Kernel& kernel, const GridSegment& segment) {
  const Vec a = toInches(segment.a), b = toInches(segment.b);
  const Vec middle = 0.5 * (a + b), d = b - a;
  const Vec aside = (2 * kNoFloor / norm(d)) * Vec{-d.y, d.x};
  return kernel.isFree(middle + aside) || kernel.isFree(middle - aside);
}

}  // namespace

double RidgeEdge::distanceToSite(int which, Vec p) const {
  const Vec a = site_a[which], d = site_b[which] - a;
  const double squared = dot(d, d);
  const double t = squared > 0 ? std::min(1.0, std::max(0.0, dot(p - a, d) / squared)) : 0.0;
  return norm(p - (a + t * d));
}

double RidgeEdge::radius(Vec p) const { return std::min(distanceToSite(0, p), distanceToSite(1, p)); }

RidgeGraph ridgesOf(const Kernel& kernel) {
  RidgeGraph graph;
  if (!kernel.has_floor) return graph;
  // What only divides one solid from another, or lies within one, is nearest to no free floor.
  std::vector<GridSegment> segments = nodedSegments(kernel);
  std::erase_if(segments, [&](const GridSegment& s) { return !boundsFloor(kernel, s); });
  Diagram diagram;
  boost::polygon::voronoi_builder<std::int32_t, ExactTraits> builder;
  boost::polygon::insert(segments.begin(), segments.end(), &builder);
  builder.construct(&diagram);
  std::vector<int> node_of(diagram.vertices().size(), -1);
  for (std::size_t i = 0; i < diagram.vertices().size(); ++i) {
    const auto& v = diagram.vertices()[i];
    const Vec at{v.x() / kGridPerInch, v.y() / kGridPerInch};
    const double f = kernel.valueAt(at).f;
    // Corners of the floor stay as ends of the ridges that run into them, too narrow to pass.
    if (!(f > -kNoFloor)) continue;
    node_of[i] = static_cast<int>(graph.nodes.size());
    graph.nodes.push_back({at, f > kNoFloor ? f : 0.0});
  }
  for (const auto& e : diagram.edges()) {
    if (!e.is_primary() || !e.is_finite() || &e > e.twin()) continue;
    const int from = node_of[e.vertex0() - diagram.vertices().data()];
    const int to = node_of[e.vertex1() - diagram.vertices().data()];
    if (from < 0 || to < 0 || from == to) continue;
    if (graph.nodes[from].f == 0 && graph.nodes[to].f == 0) continue;
    RidgeEdge edge = ridgeBetween(siteOf(*e.cell(), segments), siteOf(*e.twin()->cell(), segments),
                                  graph.nodes[from].at, graph.nodes[to].at);
    edge.from = from;
    edge.to = to;
    graph.edges.push_back(edge);
  }
  return graph;
}

}  // namespace elbowroom::floor_kernel
