// Widest routes against the widest paths of CGAL's segment Delaunay graph over the exact free floor.
//
// ELBOWROOM_ORACLE_ROOMS as in placement_test.cpp; a quarter of that many rooms here.
#include <CGAL/Segment_Delaunay_graph_2.h>
#include <CGAL/Segment_Delaunay_graph_filtered_traits_2.h>
#include <CGAL/Simple_cartesian.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cstdlib>
#include <map>
#include <queue>

#include "core/geometry/widest_ways.h"
#include "tests/oracle/bathrooms.h"

namespace elbowroom::oracle {
namespace {

using Cgal = CGAL::Simple_cartesian<double>;
using Traits = CGAL::Segment_Delaunay_graph_filtered_traits_2<Cgal>;
using Graph = CGAL::Segment_Delaunay_graph_2<Traits>;

struct Node {
  Cgal::Point_2 at;
  double radius;
};
struct Neck {
  int to;
  double radius;
};

class Ridges {
 public:
  explicit Ridges(const Scene& scene) {
    std::vector<Cgal::Segment_2> segments;
    const std::vector<FloorPiece> pieces = exactFloor(scene);
    for (const Outline& ring : ringsOf(pieces))
      for (std::size_t i = 0; i < ring.size(); ++i) {
        const Point a = ring[i], b = ring[(i + 1) % ring.size()];
        segments.emplace_back(Cgal::Point_2(a.x.inches(), a.y.inches()),
                              Cgal::Point_2(b.x.inches(), b.y.inches()));
      }
    Graph graph;
    for (const auto& s : segments) graph.insert(s.source(), s.target());
    std::map<Graph::Face_handle, int> index;
    for (auto face = graph.finite_faces_begin(); face != graph.finite_faces_end(); ++face) {
      const Cgal::Point_2 center = graph.primal(face);
      const Point p = at(center.x(), center.y());
      const bool free = std::any_of(pieces.begin(), pieces.end(), [&](const FloorPiece& piece) {
        return contains(piece.outer, p) && std::none_of(piece.holes.begin(), piece.holes.end(),
                                                        [&](const Outline& h) { return contains(h, p); });
      });
      if (!free) continue;
      double least = 1e300;
      for (const auto& s : segments) least = std::min(least, CGAL::squared_distance(center, s));
      // In doubles a centre is now and then far from where its three sites are equally far; that is no node.
      const double radius = std::sqrt(least);
      bool true_center = true;
      for (int k = 0; k < 3; ++k)
        true_center = true_center && std::fabs(toSite(center, face->vertex(k)) - radius) < 1e-4;
      if (!true_center) {
        ++not_true;
        continue;
      }
      index[face] = static_cast<int>(nodes.size());
      nodes.push_back({center, radius});
    }
    necks_.resize(nodes.size());
    for (auto edge = graph.finite_edges_begin(); edge != graph.finite_edges_end(); ++edge) {
      const auto from = index.find(edge->first), to = index.find(edge->first->neighbor(edge->second));
      if (from == index.end() || to == index.end()) continue;
      const double radius =
          neckBetween(edge->first->vertex(graph.cw(edge->second))->site(),
                      edge->first->vertex(graph.ccw(edge->second))->site(), from->second, to->second);
      necks_[static_cast<std::size_t>(from->second)].push_back({to->second, radius});
      necks_[static_cast<std::size_t>(to->second)].push_back({from->second, radius});
    }
  }

  // Largest radius that can travel from one node to each.
  std::vector<double> widestFrom(int start) const {
    std::vector<double> best(nodes.size(), 0);
    std::priority_queue<std::pair<double, int>> queue;
    best[static_cast<std::size_t>(start)] = nodes[static_cast<std::size_t>(start)].radius;
    queue.push({best[static_cast<std::size_t>(start)], start});
    while (!queue.empty()) {
      const auto [radius, node] = queue.top();
      queue.pop();
      if (radius < best[static_cast<std::size_t>(node)]) continue;
      for (const Neck& neck : necks_[static_cast<std::size_t>(node)]) {
        const double through = std::min(radius, neck.radius);
        if (through <= best[static_cast<std::size_t>(neck.to)]) continue;
        best[static_cast<std::size_t>(neck.to)] = through;
        queue.push({through, neck.to});
      }
    }
    return best;
  }
  std::vector<Node> nodes;
  int not_true = 0;

 private:
  static double toSite(Cgal::Point_2 p, Graph::Vertex_handle vertex) {
    const Graph::Site_2 site = vertex->site();
    return std::sqrt(site.is_point() ? CGAL::squared_distance(p, site.point())
                                     : CGAL::squared_distance(p, site.segment()));
  }
  // The radius is least where the two sites face each other, if the edge passes there, else at an end.
  double neckBetween(const Graph::Site_2& p, const Graph::Site_2& q, int i, int j) const {
    const Node &a = nodes[static_cast<std::size_t>(i)], &b = nodes[static_cast<std::size_t>(j)];
    const double ends = std::min(a.radius, b.radius);
    const auto between = [&](Cgal::Vector_2 along, Cgal::Point_2 foot) {
      const double s = (a.at - foot) * along, t = (b.at - foot) * along;
      return std::min(s, t) <= 0 && std::max(s, t) >= 0;
    };
    if (p.is_point() && q.is_point()) {
      const Cgal::Vector_2 across = q.point() - p.point();
      const Cgal::Point_2 middle = CGAL::midpoint(p.point(), q.point());
      if (!between({-across.y(), across.x()}, middle)) return ends;
      return std::min(ends, std::sqrt(across.squared_length()) / 2);
    }
    if (p.is_point() || q.is_point()) {
      const Cgal::Point_2 focus = p.is_point() ? p.point() : q.point();
      const Cgal::Segment_2 line = p.is_point() ? q.segment() : p.segment();
      const double height = std::sqrt(CGAL::squared_distance(focus, line.supporting_line()));
      if (height < 1e-7 || !between(line.to_vector(), focus)) return ends;
      return std::min(ends, height / 2);
    }
    return ends;
  }
  std::vector<std::vector<Neck>> necks_;
};

// Two parts of a room with one gap between them, and a few things in the way.
Scene parted(Dice& dice) {
  const double gap = dice.between(0.5, 16), from = dice.between(20, 60), low = dice.between(50, 80);
  Scene scene{rect(0, 0, 100, 140),
              {rect(0, low, from, low + dice.between(3, 12)),
               rect(from + gap, low + dice.between(-6, 6), 100, low + dice.between(7, 16))}};
  for (int k = dice.whole(0, 4); k > 0; --k)
    scene.things.push_back(star(dice, dice.between(0, 100), dice.between(0, 140), 3, 9, dice.whole(4, 9)));
  const Angle turn = Angle::fromDegrees(dice.between(0, 360));
  scene.room = turned(scene.room, turn);
  for (Outline& o : scene.things) o = turned(o, turn);
  return scene;
}

TEST(WidestRoutesOracle, AgreeWithTheSegmentDelaunayGraph) {
  const char* asked = std::getenv("ELBOWROOM_ORACLE_ROOMS");
  const int rooms = std::max(1, asked ? std::atoi(asked) : 2000) / 4;
  Dice dice(77001);
  int count = 0, necks = 0, shut = 0, not_true = 0;
  double most_above = 0, most_below = 0;
  for (int i = 0; i < rooms; ++i) {
    const Scene scene = i % 2 ? parted(dice) : bathroom(dice);
    const Ridges ridges(scene);
    not_true += ridges.not_true;
    std::vector<int> roomy;
    for (std::size_t k = 0; k < ridges.nodes.size(); ++k)
      if (ridges.nodes[k].radius > 1) roomy.push_back(static_cast<int>(k));
    if (roomy.size() < 2) continue;
    // CGAL gives them in an order that changes from run to run.
    std::sort(roomy.begin(), roomy.end(), [&](int a, int b) {
      const auto key = [&](int k) {
        const Node& node = ridges.nodes[static_cast<std::size_t>(k)];
        return std::pair(std::llround(node.at.x() * 1e5), std::llround(node.at.y() * 1e5));
      };
      return key(a) < key(b);
    });
    // The roomiest of a few, so that necks between decide.
    const auto pick = [&] {
      int best = -1;
      for (int k = 0; k < 5; ++k) {
        const int node = roomy[static_cast<std::size_t>(dice.whole(0, static_cast<int>(roomy.size()) - 1))];
        if (best < 0 || ridges.nodes[static_cast<std::size_t>(node)].radius >
                            ridges.nodes[static_cast<std::size_t>(best)].radius)
          best = node;
      }
      return best;
    };
    const int start = pick();
    std::vector<int> ends;
    std::vector<Point> targets;
    const auto place = [&](int k) {
      const Node& node = ridges.nodes[static_cast<std::size_t>(k)];
      return at(node.at.x(), node.at.y());
    };
    for (int k = 0; k < 8; ++k) {
      ends.push_back(pick());
      targets.push_back(place(ends.back()));
    }
    const std::vector<Route> routes =
        WidestWays(FreeFloor(scene.room, scene.things)).from(place(start), targets);
    const std::vector<double> widest = ridges.widestFrom(start);
    for (std::size_t k = 0; k < ends.size(); ++k) {
      const auto end = static_cast<std::size_t>(ends[k]);
      const double truth = 2 * widest[end], width = routes[k].reachable ? routes[k].width.inches() : 0;
      ++count;
      shut += truth == 0;
      most_below = std::max(most_below, truth - width);
      ASSERT_GE(width, truth - 0.02) << i << " " << k;
      // A wider disc elsewhere may contain an end as well, but not where the way is less than half as wide as
      // the room about both ends: what leads from its middle to the end is at least that half.
      const double about =
          std::min(ridges.nodes[end].radius, ridges.nodes[static_cast<std::size_t>(start)].radius);
      if (truth > about) continue;
      ++necks;
      most_above = std::max(most_above, width - truth);
      ASSERT_LE(width, truth + 0.001) << i << " " << k;
    }
  }
  printf("%d routes (%d shut), %d decided by a neck; above by %.6f, below by %.6f in; %d centres left out\n",
         count, shut, necks, most_above, most_below, not_true);
  EXPECT_GT(necks, count / 20);
}

}  // namespace
}  // namespace elbowroom::oracle
