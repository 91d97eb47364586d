// Widest routes against an erosion of the free floor by Clipper, halved down to the width.
#include "core/geometry/widest_ways.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <polyclipping/clipper.hpp>

#include "core/geometry/free_floor.h"
#include "tests/oracle/bathrooms.h"

namespace elbowroom::oracle {
namespace {

namespace cl = ClipperLib;
constexpr double kGrid = 65536;

class Erosion {
 public:
  explicit Erosion(const Scene& scene) {
    for (const Outline& ring : ringsOf(exactFloor(scene))) {
      cl::Path path;
      for (const Point& p : ring)
        path.emplace_back(std::llround(p.x.inches() * kGrid), std::llround(p.y.inches() * kGrid));
      offset_.AddPath(path, cl::jtRound, cl::etClosedPolygon);
    }
  }
  // Can a disc of this radius go from one point's reach to the other's?
  bool connects(double radius, Point from, Point to) {
    cl::PolyTree tree;
    offset_.ArcTolerance = 0.0001 * kGrid;
    offset_.Execute(tree, -radius * kGrid);
    for (const cl::PolyNode* node = tree.GetFirst(); node; node = node->GetNext())
      if (!node->IsHole() && reaches(*node, from, radius) && reaches(*node, to, radius)) return true;
    return false;
  }

 private:
  static double toPath(const cl::Path& path, double x, double y) {
    double least = 1e300;
    for (std::size_t i = 0; i < path.size(); ++i) {
      const auto &a = path[i], &b = path[(i + 1) % path.size()];
      const double dx = double(b.X - a.X), dy = double(b.Y - a.Y), n = dx * dx + dy * dy;
      const double t = n > 0 ? std::clamp(((x - a.X) * dx + (y - a.Y) * dy) / n, 0.0, 1.0) : 0;
      least = std::min(least, std::hypot(x - a.X - t * dx, y - a.Y - t * dy));
    }
    return least;
  }
  static bool reaches(const cl::PolyNode& node, Point p, double radius) {
    const double x = p.x.inches() * kGrid, y = p.y.inches() * kGrid;
    const cl::IntPoint point(std::llround(x), std::llround(y));
    bool in = cl::PointInPolygon(point, node.Contour) != 0;
    double least = toPath(node.Contour, x, y);
    for (const cl::PolyNode* hole : node.Childs) {
      in = in && cl::PointInPolygon(point, hole->Contour) != 1;
      least = std::min(least, toPath(hole->Contour, x, y));
    }
    return in || least <= radius * kGrid;
  }
  cl::ClipperOffset offset_;
};

TEST(WidestRoutesOracle, AgreeWithErosion) {
  Dice dice(77);
  int count = 0, open = 0, gates = 0;
  double most_above = 0, most_below = 0;
  for (int i = 0; i < 200; ++i) {
    const Scene scene = bathroom(dice);
    const FreeFloor floor(scene.room, scene.things);
    const Box box = boundsOf(scene.room);
    std::vector<Point> points;
    for (int k = 0; k < 400 && points.size() < 5; ++k) {
      const Point p{box.low.x + (box.high.x - box.low.x).scaled(dice.between(0, 1)),
                    box.low.y + (box.high.y - box.low.y).scaled(dice.between(0, 1))};
      if (floor.clearanceAt(p).distance > Length::fromInches(0.5)) points.push_back(p);
    }
    if (points.size() < 2) continue;
    const Point start = points.front();
    points.erase(points.begin());
    const std::vector<Route> routes = WidestWays(FreeFloor(scene.room, scene.things)).from(start, points);
    Erosion erosion(scene);
    for (std::size_t k = 0; k < points.size(); ++k) {
      double low = 0, high = 80;
      while (high - low > 0.0001) {
        const double middle = (low + high) / 2;
        (erosion.connects(middle, start, points[k]) ? low : high) = middle;
      }
      const double width = routes[k].width.inches(), truth = 2 * low;
      ++count;
      open += routes[k].reachable;
      most_above = std::max(most_above, width - truth);
      most_below = std::max(most_below, truth - width);
      // The erosion's own steps: 0.0002 in of bracket, 0.0002 in of chords (more where two arcs meet flat),
      // rounding.
      EXPECT_LE(width, truth + 0.001) << "room " << i << " route " << k;
      EXPECT_GE(width, truth - 0.005) << "room " << i << " route " << k;
      EXPECT_EQ(routes[k].reachable, truth > 0.002) << "room " << i << " route " << k;
      if (!routes[k].reachable) continue;
      // The narrowest place is as wide as said, measured on the raw outlines.
      EXPECT_NEAR(2 * floor.clearanceAt(routes[k].narrowest).distance.inches(), width, 1e-5) << i << " " << k;
      gates += std::fabs(distance(routes[k].sides.a, routes[k].sides.b).inches() - width) < 1e-5;
    }
  }
  printf("%d routes (%d open, %d with opposite sides), above by %.5f, below by %.5f in\n", count, open, gates,
         most_above, most_below);
  EXPECT_GT(open, 400);
}

}  // namespace
}  // namespace elbowroom::oracle
