// The largest circle among thousands of edges against GEOS (union, difference, maximum inscribed circle):
// here the search goes by its grid of edges, which small rooms never need.
#include <gtest/gtest.h>

#include "tests/oracle/geos_shapes.h"
#include "tests/oracle/large_scenes.h"

#include <geos/algorithm/construct/MaximumInscribedCircle.h>
#include <geos/operation/union/CascadedPolygonUnion.h>

#include <algorithm>

#include "core/geometry/free_floor.h"

namespace elbowroom::oracle {
namespace {

double largestByGeos(const Scene& scene) {
  std::vector<Shape> shapes;
  std::vector<geos::geom::Polygon*> things;
  for (const Outline& thing : scene.things) {
    shapes.push_back(solid(thing));
    things.push_back(static_cast<geos::geom::Polygon*>(shapes.back().get()));
  }
  const Shape covered = geos::operation::geounion::CascadedPolygonUnion::Union(&things);
  const Shape floor = solid(scene.room)->difference(covered.get());
  double largest = 0;
  for (std::size_t i = 0; i < floor->getNumGeometries(); ++i) {
    const geos::geom::Geometry* piece = floor->getGeometryN(i);
    if (piece->getDimension() != geos::geom::Dimension::A) continue;
    geos::algorithm::construct::MaximumInscribedCircle mic(piece, 0.002);
    largest = std::max(largest, mic.getRadiusLine()->getLength());
  }
  return largest;
}

TEST(LargestCircleOracle, AgreesWithGeosAmongThousandsOfEdges) {
  Dice dice(20261126);
  double worst = 0;
  std::size_t fewest = 100000, most = 0;
  for (int i = 0; i < 60; ++i) {
    const Scene scene = largeScene(kLarge[i % std::size(kLarge)], dice);
    const std::size_t edges = edgesOf(scene);
    fewest = std::min(fewest, edges), most = std::max(most, edges);
    const FreeFloor floor(scene.room, scene.things);
    const Circle circle = floor.largestCircle();
    ASSERT_LE(circle.radius, std::max(Length{}, floor.clearanceAt(circle.center).distance)) << i;
    const double geos = largestByGeos(scene);
    worst = std::max(worst, std::fabs(circle.radius.inches() - geos));
    EXPECT_NEAR(circle.radius.inches(), geos, 0.005 + 0.002) << i << ", " << edges << " edges";
  }
  printf("%zu to %zu edges, worst difference %.5f in\n", fewest, most, worst);
  EXPECT_GE(fewest, 1000u);
  EXPECT_LE(most, 5000u);
  EXPECT_GT(most, 4000u);
}

}  // namespace
}  // namespace elbowroom::oracle
