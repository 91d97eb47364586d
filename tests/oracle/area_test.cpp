// Areas against CGAL's exact polygon set operations on the same nanometre coordinates.
#include <CGAL/Exact_predicates_exact_constructions_kernel.h>
#include <CGAL/Polygon_2.h>
#include <CGAL/Polygon_set_2.h>
#include <CGAL/Polygon_with_holes_2.h>
#include <gtest/gtest.h>

#include "core/geometry/measure.h"
#include "tests/oracle/flush_scenes.h"

namespace elbowroom::oracle {
namespace {

using Exact = CGAL::Exact_predicates_exact_constructions_kernel;
using Polygon = CGAL::Polygon_2<Exact>;
using Holed = CGAL::Polygon_with_holes_2<Exact>;
using PolygonSet = CGAL::Polygon_set_2<Exact>;

constexpr double kTolerance = 0.01;  // square inches

Polygon exact(const Outline& ring) {
  Polygon polygon;
  for (const Point& p : ring) {
    polygon.push_back({static_cast<double>(p.x.nm()), static_cast<double>(p.y.nm())});
  }
  if (polygon.is_clockwise_oriented()) polygon.reverse_orientation();
  return polygon;
}

double squareInches(const Exact::FT& square_nm) { return CGAL::to_double(square_nm) / 25.4e6 / 25.4e6; }

double areaOf(const PolygonSet& set) {
  std::vector<Holed> parts;
  set.polygons_with_holes(std::back_inserter(parts));
  Exact::FT sum = 0;
  for (const Holed& part : parts) {
    sum += part.outer_boundary().area();
    for (const Polygon& hole : part.holes()) sum += hole.area();  // clockwise: negative
  }
  return squareInches(sum);
}

double exactFreeArea(const Scene& scene) {
  std::vector<Polygon> things;
  for (const Outline& thing : scene.things) things.push_back(exact(thing));
  PolygonSet covered;
  covered.join(things.begin(), things.end());
  PolygonSet free(exact(scene.room));
  free.difference(covered);
  return areaOf(free);
}

double exactCommonArea(const Outline& a, const Outline& b) {
  PolygonSet set(exact(a));
  set.intersection(exact(b));
  return areaOf(set);
}

double regionsArea(const Scene& scene) {
  double sum = 0;
  for (const Outline& ring : freeRegions(scene.room, scene.things)) sum += signedAreaOf(ring).squareInches();
  return sum;
}

class FlushArea : public testing::TestWithParam<Flush> {};

TEST_P(FlushArea, FreeFloorOf1000ScenesIsThatOfExactArithmetic) {
  double worst = 0;
  for (std::uint64_t seed = 1; seed <= 1000; ++seed) {
    const Scene scene = flushScene(GetParam(), seed);
    const double truth = exactFreeArea(scene);
    const double ours = freeArea(scene.room, scene.things).squareInches();
    ASSERT_NEAR(ours, truth, kTolerance) << "seed " << seed;
    ASSERT_NEAR(regionsArea(scene), truth, kTolerance) << "seed " << seed;
    worst = std::max(worst, std::abs(ours - truth));
  }
  RecordProperty("worst_square_inches", std::to_string(worst));
}

std::string flushName(const testing::TestParamInfo<Flush>& info) {
  static const char* const names[] = {"QuarterGrid", "AngledWall", "TurnedPlan", "Curves",
                                      "TenthMm",     "TinyGaps",   "Nested"};
  return names[static_cast<int>(info.param)];
}
INSTANTIATE_TEST_SUITE_P(Kinds, FlushArea, testing::ValuesIn(kFlush), flushName);

// Where things stand on a 1/4 in grid, sharing floor at all is sharing more than contact.
TEST(FlushOverlap, SharingFloorIsOverlapAndFlushIsNot) {
  int overlaps = 0, flush = 0;
  for (const Flush kind : {Flush::quarter_grid, Flush::turned_plan, Flush::nested}) {
    for (std::uint64_t seed = 1; seed <= 12; ++seed) {
      const auto things = flushScene(kind, seed).things;
      for (std::size_t i = 0; i < things.size(); ++i) {
        for (std::size_t j = i + 1; j < things.size(); ++j) {
          const Gap gap = gapBetween(things[i], things[j]);
          const double common = exactCommonArea(things[i], things[j]);
          // A turned plan is rounded to nanometres: flush edges then share slivers below 1e-4 sq in.
          ASSERT_EQ(gap.overlap, common > 1e-4)
              << static_cast<int>(kind) << ' ' << seed << ' ' << i << ' ' << j;
          ASSERT_NEAR(commonArea(things[i], things[j]).squareInches(), common, kTolerance);
          overlaps += gap.overlap;
          flush += !gap.overlap && gap.distance < Length::nanometres(3);
        }
      }
    }
  }
  EXPECT_GT(overlaps, 200);
  EXPECT_GT(flush, 200);
}

TEST(RandomRooms, FreeFloorAndAreas) {
  Dice dice(20240611);
  for (int i = 0; i < 200; ++i) {
    Scene scene{star(dice, 60, 60, 30, 90, dice.whole(4, 14)), {}};
    for (int k = dice.whole(0, 12); k > 0; --k) {
      const double x = dice.between(-10, 130), y = dice.between(-10, 130);
      Outline thing = star(dice, x, y, 4, 30, dice.whole(3, 10));
      scene.things.push_back(dice.chance(0.5) ? thing : reversed(thing));
    }
    ASSERT_NEAR(freeArea(scene.room, scene.things).squareInches(), exactFreeArea(scene), kTolerance) << i;
    ASSERT_NEAR(elbowroom::areaOf(scene.room).squareInches(), squareInches(exact(scene.room).area()), 1e-8)
        << i;
    if (!scene.things.empty()) {
      ASSERT_NEAR(commonArea(scene.room, scene.things[0]).squareInches(),
                  exactCommonArea(scene.room, scene.things[0]), kTolerance)
          << i;
    }
    ASSERT_EQ(selfCrossing(scene.room).has_value(), !exact(scene.room).is_simple()) << i;
  }
}

TEST(RandomRooms, CrossingRingsAreFoundAndSimpleOnesPass) {
  Dice dice(5);
  int crossing = 0;
  for (int i = 0; i < 2000; ++i) {
    Outline ring;
    for (int k = dice.whole(3, 7); k > 0; --k) ring.push_back(at(dice.whole(0, 6), dice.whole(0, 6)));
    const Polygon polygon(exact(ring));
    const bool simple = polygon.is_simple() && polygon.area() != 0;
    ASSERT_EQ(!selfCrossing(ring).has_value(), simple) << i;
    crossing += !simple;
  }
  EXPECT_GT(crossing, 500);
  EXPECT_LT(crossing, 1900);
}

TEST(RandomRooms, ContainsPointsAsExactArithmetic) {
  Dice dice(6);
  int boundary = 0;
  for (int i = 0; i < 200; ++i) {
    Outline ring;
    do {
      ring.clear();
      for (int k = dice.whole(3, 7); k > 0; --k) ring.push_back(at(dice.whole(0, 8), dice.whole(0, 8)));
    } while (selfCrossing(ring));
    const Polygon polygon = exact(ring);
    for (int x = -1; x <= 9; ++x) {
      for (int y = -1; y <= 9; ++y) {
        const Point p = at(x, y);
        const auto where =
            polygon.bounded_side({static_cast<double>(p.x.nm()), static_cast<double>(p.y.nm())});
        ASSERT_EQ(contains(ring, p), where != CGAL::ON_UNBOUNDED_SIDE) << i << ' ' << x << ' ' << y;
        boundary += where == CGAL::ON_BOUNDARY;
      }
    }
  }
  EXPECT_GT(boundary, 500);
}

}  // namespace
}  // namespace elbowroom::oracle
