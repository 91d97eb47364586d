// Largest and nearest circle against GEOS (maximum inscribed circle, buffer) and CGAL (segment Delaunay
// graph).
#include <CGAL/Segment_Delaunay_graph_2.h>
#include <CGAL/Segment_Delaunay_graph_filtered_traits_2.h>
#include <CGAL/Simple_cartesian.h>
#include <gtest/gtest.h>

#include "tests/oracle/bathrooms.h"

#include <geos/algorithm/construct/MaximumInscribedCircle.h>

#include <algorithm>

#include "core/geometry/free_floor.h"

namespace elbowroom::oracle {
namespace {

using Cgal = CGAL::Simple_cartesian<double>;
using Traits = CGAL::Segment_Delaunay_graph_filtered_traits_2<Cgal>;
using Graph = CGAL::Segment_Delaunay_graph_2<Traits>;

double largestByGeos(const std::vector<Shape>& pieces) {
  double best = 0;
  for (const Shape& piece : pieces) {
    geos::algorithm::construct::MaximumInscribedCircle mic(piece.get(), 0.002);
    best = std::max(best, mic.getRadiusLine()->getLength());
  }
  return best;
}

// The largest disc about a Voronoi vertex on free floor.
double largestByCgal(const Scene& scene) {
  Graph graph;
  const std::vector<Outline> rings = ringsOf(exactFloor(scene));
  std::vector<Cgal::Segment_2> segments;
  for (const Outline& ring : rings)
    for (std::size_t i = 0; i < ring.size(); ++i) {
      const Point a = ring[i], b = ring[(i + 1) % ring.size()];
      segments.emplace_back(Cgal::Point_2(a.x.inches(), a.y.inches()),
                            Cgal::Point_2(b.x.inches(), b.y.inches()));
    }
  for (const auto& s : segments) graph.insert(s.source(), s.target());
  double best = 0;
  for (auto face = graph.finite_faces_begin(); face != graph.finite_faces_end(); ++face) {
    const Cgal::Point_2 center = graph.primal(face);
    double least = 1e300;
    for (const auto& s : segments)
      least = std::min(least, CGAL::to_double(CGAL::squared_distance(center, s)));
    if (least <= best * best) continue;
    const Point p = at(center.x(), center.y());
    bool free = contains(scene.room, p);
    for (const Outline& thing : scene.things) free = free && !contains(thing, p);
    if (free) best = std::sqrt(least);
  }
  return best;
}

TEST(LargestCircleOracle, AgreesWithGeosAndCgalIn500Rooms) {
  Dice dice(20261125);
  double worst_geos = 0, worst_cgal = 0;
  for (int i = 0; i < 500; ++i) {
    const Scene scene = bathroom(dice);
    const FreeFloor floor(scene.room, scene.things);
    const Circle circle = floor.largestCircle();
    ASSERT_LE(circle.radius, std::max(Length{}, floor.clearanceAt(circle.center).distance)) << i;
    const double radius = circle.radius.inches();
    const double geos = largestByGeos(freePolygons(scene)), cgal = largestByCgal(scene);
    worst_geos = std::max(worst_geos, std::fabs(radius - geos));
    worst_cgal = std::max(worst_cgal, std::fabs(radius - cgal));
    ASSERT_NEAR(radius, geos, 0.01 + 0.002) << i;
    ASSERT_NEAR(radius, cgal, 0.005) << i;
  }
  RecordProperty("worst_geos", std::to_string(worst_geos));
  RecordProperty("worst_cgal", std::to_string(worst_cgal));
  printf("worst difference: GEOS %.5f in, CGAL %.6f in\n", worst_geos, worst_cgal);
}

// Floor eroded by GEOS with 128 chords a quadrant (sagitta under 0.001 in at 30 in), nearest point of what is
// left.
TEST(NearestCircleOracle, AgreesWithAnErodedFloor) {
  Dice dice(42);
  int fits = 0, none = 0;
  double worst = 0;
  for (int i = 0; i < 300; ++i) {
    const Scene scene = bathroom(dice);
    const FreeFloor floor(scene.room, scene.things);
    const double largest = floor.largestCircle().radius.inches();
    const double radius = i % 2 ? 30 : largest * dice.between(0.3, 0.97);
    if (radius < 1 || std::fabs(radius - largest) < 0.05) continue;
    const Box box = boundsOf(scene.room);
    const Point near{box.low.x + (box.high.x - box.low.x).scaled(dice.between(0, 1)),
                     box.low.y + (box.high.y - box.low.y).scaled(dice.between(0, 1))};
    double least = 1e300;
    for (const Shape& piece : freePolygons(scene)) {
      const Shape eroded = piece->buffer(-radius, 128);
      if (!eroded->isEmpty()) least = std::min(least, eroded->distance(dot(near).get()));
    }
    const auto circle = floor.nearestCircle(Length::fromInches(2 * radius), near);
    ASSERT_EQ(circle.has_value(), radius < largest) << i;
    if (!circle) {
      ++none;
      ASSERT_GT(least, 1e299) << i;
      continue;
    }
    ++fits;
    ASSERT_GE(floor.clearanceAt(circle->center).distance.inches(), radius - 0.01) << i;
    const double d = distance(circle->center, near).inches();
    worst = std::max(worst, std::fabs(d - least));
    ASSERT_NEAR(d, least, 0.02 + 0.01) << i << " radius " << radius << " largest " << largest;
  }
  printf("fits %d, none %d, worst difference %.5f in\n", fits, none, worst);
  EXPECT_GT(fits, 100);
  EXPECT_GT(none, 30);
}

}  // namespace
}  // namespace elbowroom::oracle
