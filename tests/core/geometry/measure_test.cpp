#include "core/geometry/measure.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Outline rect(double x0, double y0, double x1, double y1) {
  return {at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)};
}
Outline reversed(Outline ring) { return {ring.rbegin(), ring.rend()}; }

TEST(Area, OfARectangleEitherWayRound) {
  EXPECT_DOUBLE_EQ(areaOf(rect(0, 0, 96, 60)).squareInches(), 5760);
  EXPECT_DOUBLE_EQ(areaOf(reversed(rect(0, 0, 96, 60))).squareInches(), 5760);
  EXPECT_GT(signedAreaOf(rect(0, 0, 96, 60)), Area{});
  EXPECT_LT(signedAreaOf(reversed(rect(0, 0, 96, 60))), Area{});
}

TEST(Area, IsExactFarFromTheOrigin) {
  const Outline far{{Length::nanometres(99'999'999'999), Length::nanometres(-99'999'999'999)},
                    {Length::nanometres(100'000'000'999), Length::nanometres(-99'999'999'999)},
                    {Length::nanometres(100'000'000'999), Length::nanometres(-99'999'997'999)}};
  EXPECT_EQ(areaOf(far).squareMicrometres(), 1);  // 1000 x 2000 nm / 2 = 1 square micrometre
}

TEST(Area, OfNothingIsZero) {
  EXPECT_EQ(areaOf({}), Area{});
  EXPECT_EQ(areaOf({at(0, 0), at(3, 4)}), Area{});
}

TEST(Centroid, OfAnL) {
  // Two rectangles 10 x 2 at (5, 1) and 2 x 8 at (1, 6): (5*20 + 1*16)/36, (1*20 + 6*16)/36.
  const Outline l{at(0, 0), at(10, 0), at(10, 2), at(2, 2), at(2, 10), at(0, 10)};
  EXPECT_NEAR(centroidOf(l).x.inches(), 116.0 / 36, 1e-7);
  EXPECT_NEAR(centroidOf(l).y.inches(), 116.0 / 36, 1e-7);
}

TEST(Contains, BoundaryCountsAndNanometresDecide) {
  const Outline triangle{at(0, 0), at(30, 0), at(0, 10)};
  EXPECT_TRUE(contains(triangle, at(15, 5)));
  EXPECT_FALSE(contains(triangle, {15_in, 5_in + Length::nanometres(1)}));
  EXPECT_TRUE(contains(triangle, at(0, 0)));
  EXPECT_TRUE(contains(triangle, at(0, 4)));
  EXPECT_FALSE(contains(triangle, at(-1, 0)));
  EXPECT_FALSE(contains(triangle, at(31, 0)));
}

TEST(SelfCrossing, FindsCrossingTouchSpikeAndRepeat) {
  EXPECT_FALSE(selfCrossing(rect(0, 0, 10, 10)));
  EXPECT_EQ(selfCrossing({at(0, 0), at(10, 10), at(10, 0), at(0, 10)}), at(5, 5));
  EXPECT_EQ(selfCrossing({at(0, 0), at(10, 0), at(10, 10), at(5, 0), at(0, 10)}), at(5, 0));
  EXPECT_TRUE(selfCrossing({at(0, 0), at(10, 0), at(10, 0), at(0, 10)}));
  EXPECT_TRUE(selfCrossing({at(0, 0), at(10, 0), at(5, 0), at(5, 10)}));
  EXPECT_TRUE(selfCrossing({at(0, 0), at(10, 0), at(20, 0)}));
}

TEST(GapBetween, NearestPointsOfTwoRectangles) {
  const Gap gap = gapBetween(rect(0, 0, 10, 10), rect(13, 14, 20, 20));
  EXPECT_EQ(gap.distance, 5_in);  // 3-4-5
  EXPECT_EQ(gap.from, at(10, 10));
  EXPECT_EQ(gap.to, at(13, 14));
  EXPECT_FALSE(gap.overlap);
}

TEST(GapBetween, FlushIsContactNotOverlap) {
  const Outline a = rect(0, 0, 10, 10);
  EXPECT_EQ(gapBetween(a, rect(10, 2, 20, 8)).distance, 0_in);
  EXPECT_FALSE(gapBetween(a, rect(10, 2, 20, 8)).overlap);
  EXPECT_FALSE(gapBetween(a, rect(10, 10, 20, 20)).overlap);
  EXPECT_FALSE(gapBetween(a, rect(10 - 1 / 64.0, 0, 20, 10)).overlap);
  EXPECT_TRUE(gapBetween(a, rect(10 - 1 / 64.0 - 0.001, 0, 20, 10)).overlap);
}

TEST(GapBetween, EveryWayOfSharingFloorIsOverlap) {
  const Outline a = rect(0, 0, 10, 10);
  EXPECT_TRUE(gapBetween(a, rect(2, 2, 8, 8)).overlap);
  EXPECT_TRUE(gapBetween(rect(2, 2, 8, 8), a).overlap);
  EXPECT_TRUE(gapBetween(a, a).overlap);
  EXPECT_TRUE(gapBetween(a, rect(0.001, 0.001, 9.999, 9.999)).overlap);
  EXPECT_TRUE(gapBetween(rect(0, 4, 10, 6), rect(4, 0, 6, 10)).overlap);
  EXPECT_TRUE(gapBetween(a, rect(0, 0, 10, 5)).overlap);
  const Gap corner = gapBetween(a, {at(9.9, 5), at(15, 0), at(15, 10)});
  EXPECT_TRUE(corner.overlap);
  EXPECT_EQ(corner.distance, 0_in);
  EXPECT_TRUE(contains(a, corner.from));
}

TEST(GapToBoundary, InsideFlushAndThroughTheWall) {
  const Outline room = rect(0, 0, 96, 60);
  EXPECT_EQ(gapToBoundary(rect(10, 20, 30, 50), room).distance, 10_in);
  EXPECT_EQ(gapToBoundary(rect(10, 20, 30, 60), room).distance, 0_in);
  EXPECT_FALSE(gapToBoundary(rect(10, 20, 30, 60), room).overlap);
  EXPECT_TRUE(gapToBoundary(rect(10, 20, 30, 61), room).overlap);
  EXPECT_TRUE(gapToBoundary(rect(100, 0, 110, 10), room).overlap);
  const Outline l{at(0, 0), at(96, 0), at(96, 60), at(48, 60), at(48, 30), at(0, 30)};
  EXPECT_TRUE(gapToBoundary(rect(40, 20, 60, 40), l).overlap);
}

TEST(GapFromPoint, OutsideOnAndIn) {
  const Outline a = rect(0, 0, 10, 10);
  EXPECT_EQ(gapFromPoint(at(13, 14), a).distance, 5_in);
  EXPECT_EQ(gapFromPoint(at(13, 14), a).to, at(10, 10));
  EXPECT_EQ(gapFromPoint(at(10, 5), a).distance, 0_in);
  EXPECT_FALSE(gapFromPoint(at(10, 5), a).overlap);
  EXPECT_TRUE(gapFromPoint(at(5, 5), a).overlap);
}

TEST(GapBetweenSegments, CrossTouchAndApart) {
  EXPECT_EQ(gapBetween(Segment{at(0, 0), at(10, 10)}, Segment{at(0, 10), at(10, 0)}).from, at(5, 5));
  EXPECT_EQ(gapBetween(Segment{at(0, 0), at(10, 0)}, Segment{at(4, 3), at(4, 9)}).distance, 3_in);
  EXPECT_EQ(gapBetween(Segment{at(0, 0), at(10, 0)}, Segment{at(20, 0), at(14, 0)}).distance, 4_in);
}

const Outline kRoom = rect(0, 0, 96, 60);

TEST(ClearAhead, StopsAtTheFirstThingInTheStrip) {
  const Segment front{at(30, 28), at(50, 28)};
  const Ahead wall = clearAhead(front, {0, 1}, kRoom, {});
  EXPECT_EQ(wall.distance, 32_in);
  EXPECT_EQ(wall.hit, -1);
  const Ahead thing = clearAhead(front, {0, 1}, kRoom, {rect(80, 30, 90, 40), rect(45, 49, 70, 60)});
  EXPECT_EQ(thing.distance, 21_in);
  EXPECT_EQ(thing.hit, 1);
  EXPECT_EQ(thing.at.y, 49_in);
}

TEST(ClearAhead, FlushNeighboursAndThingsBehindDoNotCount) {
  const Segment front{at(30, 28), at(50, 28)};
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(50, 0, 60, 60), rect(0, 0, 30, 60)}).distance, 32_in);
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(50 - 1 / 64.0, 0, 60, 60)}).distance, 32_in);
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(50 - 1 / 32.0, 40, 60, 60)}).distance, 12_in);
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(30, 0, 50, 28)}).distance, 32_in);
}

TEST(ClearAhead, BlockedAtTheFrontIsZero) {
  const Segment front{at(30, 28), at(50, 28)};
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(40, 20, 45, 40)}).distance, 0_in);
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(20, 20, 60, 40)}).distance, 0_in);
  EXPECT_EQ(clearAhead(front, {0, 1}, kRoom, {rect(40, 28, 45, 40)}).distance, 0_in);
  EXPECT_EQ(clearAhead({at(30, 60), at(50, 60)}, {0, 1}, kRoom, {}).distance, 0_in);
}

TEST(ClearAhead, AgainstAnAngledWallTheNearerCornerDecides) {
  const Outline attic{at(0, 0), at(96, 0), at(96, 30), at(66, 60), at(0, 60)};
  EXPECT_NEAR(clearAhead({at(60, 20), at(76, 20)}, {0, 1}, attic, {}).distance.inches(), 30 + 1 / 64.0, 1e-6);
}

TEST(FreeArea, FlushOverlappingAndReversedObstacles) {
  EXPECT_NEAR(freeArea(kRoom, {}).squareInches(), 5760, 1e-6);
  EXPECT_NEAR(freeArea(kRoom, {rect(66, 0, 96, 60)}).squareInches(), 66 * 60, 1e-6);
  const std::vector<Outline> crossing{rect(0, 0, 20, 20), reversed(rect(10, 0, 30, 20))};
  EXPECT_NEAR(freeArea(kRoom, crossing).squareInches(), 5760 - 600, 1e-6);
  EXPECT_NEAR(freeArea(kRoom, {rect(-10, -10, 10, 10)}).squareInches(), 5660, 1e-6);
  EXPECT_NEAR(freeArea(kRoom, {kRoom}).squareInches(), 0, 1e-6);
}

TEST(FreeRegions, HoleIsClockwise) {
  const auto rings = freeRegions(kRoom, {rect(40, 20, 50, 30)});
  ASSERT_EQ(rings.size(), 2u);
  EXPECT_NEAR(signedAreaOf(rings[0]).squareInches() + signedAreaOf(rings[1]).squareInches(), 5660, 1e-3);
  EXPECT_LT(std::min(signedAreaOf(rings[0]), signedAreaOf(rings[1])).squareInches(), -99);
}

TEST(CommonArea, OfTwoRectangles) {
  EXPECT_NEAR(commonArea(rect(0, 0, 10, 10), reversed(rect(5, 5, 20, 20))).squareInches(), 25, 1e-6);
  EXPECT_EQ(commonArea(rect(0, 0, 10, 10), rect(10, 0, 20, 10)), Area{});
}

TEST(ArcPoints, FirstAndLastAreExact) {
  const Outline arc = arcPoints(at(10, 10), 30_in, {1, 0}, 90_deg, 8);
  ASSERT_EQ(arc.size(), 9u);
  EXPECT_EQ(arc.front(), at(40, 10));
  EXPECT_EQ(arc.back(), at(10, 40));
  for (const Point& p : arc) EXPECT_NEAR(distance(p, at(10, 10)).inches(), 30, 1e-6);
}

}  // namespace
}  // namespace elbowroom
