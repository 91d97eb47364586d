#include "core/geometry/sweep.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

using namespace literals;

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Outline rect(double x0, double y0, double x1, double y1) {
  return {at(x0, y0), at(x1, y0), at(x1, y1), at(x0, y1)};
}
double degreesOf(double y, double x) { return std::atan2(y, x) * 180 / std::numbers::pi; }

const Leaf kLeaf{at(0, 0), 30_in, {1, 0}, 90_deg};
constexpr double kHair = 1 / 64.0;

// Worked examples of the trade: a leaf of width W takes pi/4 W^2 of floor, the square around it W^2.
TEST(SectorArea, QuarterCircleAndSquareOfCommonLeaves) {
  struct {
    int width;
    double quarter, square;
  } const rows[] = {
      {36, 7.069, 9.000}, {32, 5.585, 7.111}, {30, 4.909, 6.250}, {28, 4.276, 5.444}, {24, 3.142, 4.000}};
  for (const auto& row : rows) {
    const Length w = Length::fromInches(row.width);
    EXPECT_NEAR(sectorArea({at(0, 0), w, {1, 0}, 90_deg}).squareFeet(), row.quarter, 0.0005);
    EXPECT_NEAR(sectorArea({at(0, 0), w, {1, 0}, -90_deg}).squareFeet(), row.quarter, 0.0005);
    EXPECT_NEAR((w * w).squareFeet(), row.square, 0.0005);
  }
}

// A 30 in leaf with its pin an inch off reaches 31 in: the corner (24, 18) is 30.00 in from the pin, a clash;
// (26, 18) is 31.62 in from it, clear.
TEST(FirstTouch, CornerWithinReachClashesCornerBeyondIsClear) {
  const auto clash = firstTouch(kLeaf, 31_in, {rect(24, 18, 60, 60)});
  ASSERT_TRUE(clash);
  // The tip meets the bottom edge of the thing before the leaf meets its corner.
  EXPECT_NEAR(clash->opened.degrees(), std::asin(18.0 / 31) * 180 / std::numbers::pi, 1e-5);
  EXPECT_NEAR(clash->at.x.inches(), std::sqrt(31.0 * 31 - 18 * 18), 1e-6);
  EXPECT_EQ(clash->obstacle, 0);
  EXPECT_FALSE(firstTouch(kLeaf, 31_in, {rect(26, 18, 60, 60)}));

  const auto corner = firstTouch(kLeaf, 31_in, {{at(24, 18), at(60, 60), at(24, 60)}});
  ASSERT_TRUE(corner);
  EXPECT_NEAR(corner->opened.degrees(), degreesOf(18, 24), 1e-5);
  EXPECT_EQ(corner->at, at(24, 18));
}

TEST(FirstTouch, SameForALeafTurningTheOtherWay) {
  const Leaf mirrored{at(0, 0), 30_in, {-1, 0}, -90_deg};
  const auto touch = firstTouch(mirrored, 31_in, {rect(-60, 18, -24, 60)});
  ASSERT_TRUE(touch);
  EXPECT_NEAR(touch->opened.degrees(), std::asin(18.0 / 31) * 180 / std::numbers::pi, 1e-5);
  EXPECT_LT(touch->at.x, 0_in);
}

TEST(FirstTouch, TheEarliestOfSeveralCounts) {
  const auto touch =
      firstTouch(kLeaf, 30_in, {rect(0, 20, 10, 28), rect(20, 10, 22, 12), rect(40, 0, 50, 50)});
  ASSERT_TRUE(touch);
  EXPECT_EQ(touch->obstacle, 1);
  EXPECT_NEAR(touch->opened.degrees(), degreesOf(10, 22), 1e-5);
  EXPECT_EQ(touch->at, at(22, 10));
}

TEST(FirstTouch, FlushNeighboursLetTheLeafOpen) {
  // Beside the hinge, beside the latch at exactly the reach, tangent to the arc, flush behind the open leaf.
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-30, 0, 0, 21)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(30, 0, 60, 21)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-10, 30, 40, 50)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-5, -5, 40, 0)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-10, -10, 0, 0)}));
}

TEST(FirstTouch, ContactIsForgivenAndNoMore) {
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-30, 0, kHair, 21)}));
  EXPECT_TRUE(firstTouch(kLeaf, 30_in, {rect(-30, 0, kHair + 0.001, 21)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-10, 30 - kHair, 40, 50)}));
  EXPECT_TRUE(firstTouch(kLeaf, 30_in, {rect(-10, 30 - kHair - 0.001, 40, 50)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {rect(-5, -5, 40, kHair)}));
  EXPECT_TRUE(firstTouch(kLeaf, 30_in, {rect(-5, -5, 40, kHair + 0.001)}));
}

TEST(FirstTouch, ThingInFrontOfTheClosedLeafStopsItAtOnce) {
  EXPECT_EQ(firstTouch(kLeaf, 30_in, {rect(10, 0, 20, 12)})->opened, 0_deg);
  EXPECT_EQ(firstTouch(kLeaf, 30_in, {rect(10, kHair / 2, 20, 12)})->opened, 0_deg);
  EXPECT_EQ(firstTouch(kLeaf, 30_in, {rect(-40, -40, 40, 40)})->opened, 0_deg);
  EXPECT_EQ(firstTouch(kLeaf, 30_in, {rect(-5, -5, 5, 5)})->opened, 0_deg);
  // Reaching a little over the latch side: the tip is blocked from the start.
  EXPECT_EQ(firstTouch(kLeaf, 30_in, {rect(29, 0, 60, 21)})->opened, 0_deg);
}

TEST(FirstTouch, ThingStandingInTheHingeCorner) {
  // Over the open position by 2 in, from 10 in out: the leaf meets its near corner.
  const auto touch = firstTouch(kLeaf, 30_in, {rect(-10, 10, 2, 20)});
  ASSERT_TRUE(touch);
  EXPECT_NEAR(touch->opened.degrees(), degreesOf(10, 2), 1e-5);
  EXPECT_EQ(touch->at, at(2, 10));
}

TEST(FirstTouch, NeedleCrossingTheSwingIsMet) {
  const auto touch = firstTouch(kLeaf, 30_in, {rect(-40, 10, 40, 10.25)});
  ASSERT_TRUE(touch);
  EXPECT_NEAR(touch->opened.degrees(), std::asin(10.0 / 30) * 180 / std::numbers::pi, 1e-5);
}

TEST(FirstTouch, WideSwingMeetsThingsBehind) {
  const Leaf wide{at(0, 0), 30_in, {1, 0}, 180_deg};
  EXPECT_FALSE(firstTouch(wide, 30_in, {rect(-40, -10, 40, 0)}));
  const auto touch = firstTouch(wide, 30_in, {rect(-20, 0, -10, 5)});
  ASSERT_TRUE(touch);
  EXPECT_NEAR(touch->opened.degrees(), degreesOf(5, -10), 1e-5);
}

TEST(FirstTouch, NothingToOpenNothingTouched) {
  EXPECT_FALSE(firstTouch({at(0, 0), 30_in, {1, 0}, 0_deg}, 30_in, {rect(-5, -5, 5, 5)}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {}));
  EXPECT_FALSE(firstTouch(kLeaf, 30_in, {Outline{}}));
}

TEST(FirstWallTouch, HingeInTheCornerOpensFlushAgainstTheSideWall) {
  EXPECT_FALSE(firstWallTouch(kLeaf, rect(0, 0, 96, 60)));
  EXPECT_FALSE(firstWallTouch(kLeaf, rect(-4, 0, 96, 60)));
  EXPECT_FALSE(firstWallTouch(kLeaf, rect(0, 0, 30, 30)));
}

TEST(FirstWallTouch, ShallowRoomStopsTheTip) {
  const auto touch = firstWallTouch(kLeaf, rect(-20, 0, 60, 24));
  ASSERT_TRUE(touch);
  EXPECT_EQ(touch->obstacle, -1);
  EXPECT_NEAR(touch->opened.degrees(), std::asin(24.0 / 30) * 180 / std::numbers::pi, 1e-5);
  EXPECT_NEAR(touch->at.x.inches(), 18, 1e-6);  // 18-24-30
}

TEST(FirstWallTouch, ReflexCornerAndLeafBeyondTheWall) {
  const Outline l{at(-10, 0), at(60, 0), at(60, 60), at(20, 60), at(20, 15), at(-10, 15)};
  const auto touch = firstWallTouch(kLeaf, l);
  ASSERT_TRUE(touch);
  EXPECT_NEAR(touch->opened.degrees(), degreesOf(15, 20), 1e-5);
  EXPECT_EQ(touch->at, at(20, 15));
  EXPECT_EQ(firstWallTouch(kLeaf, rect(-10, 0, 25, 60))->opened, 0_deg);
  // Angled wall that starts at the hinge, 60 degrees up.
  const Outline angled{at(0, 0), at(96, 0), at(96, 60), at(60 / std::sqrt(3.0), 60)};
  EXPECT_NEAR(firstWallTouch(kLeaf, angled)->opened.degrees(), 60, 1e-4);
}

TEST(SectorsMeet, DoubleDoorAndNeighbours) {
  const Leaf left{at(0, 0), 15_in, {1, 0}, 90_deg}, right{at(30, 0), 15_in, {-1, 0}, -90_deg};
  EXPECT_FALSE(sectorsMeet(left, right));
  const Leaf longer{at(30, 0), 16_in, {-1, 0}, -90_deg};
  const auto place = sectorsMeet(left, longer);
  ASSERT_TRUE(place);
  EXPECT_GE(place->x, 14_in);
  EXPECT_LE(place->x, 15_in);
  // Back to back at one wall, hinges together: flush along the open position.
  EXPECT_FALSE(sectorsMeet(left, {at(0, 0), 15_in, {-1, 0}, -90_deg}));
  // Opposite sides of one wall.
  EXPECT_FALSE(sectorsMeet(left, {at(0, 0), 15_in, {1, 0}, -90_deg}));
}

TEST(SectorsMeet, NestedCoincidentAndCrossing) {
  const Leaf big{at(0, 0), 60_in, {1, 0}, 90_deg}, small{at(20, 20), 6_in, {0, 1}, 90_deg};
  EXPECT_TRUE(sectorsMeet(big, small));
  EXPECT_TRUE(sectorsMeet(small, big));
  EXPECT_TRUE(sectorsMeet(big, big));
  // At a corner of the room: the arcs cross, hinges 56.6 in apart.
  const Leaf other{at(40, 40), 30_in, {0, -1}, -90_deg};
  EXPECT_TRUE(sectorsMeet({at(0, 0), 30_in, {1, 0}, 90_deg}, other));
  const Leaf apart{at(43, 43), 30_in, {0, -1}, -90_deg};  // hinges 60.8 in apart
  EXPECT_FALSE(sectorsMeet({at(0, 0), 30_in, {1, 0}, 90_deg}, apart));
}

TEST(GapToSector, ArcRadiusAndCornerDecideInTurn) {
  // 45-degree corner at (30, 30): 42.4264 - 30 from the arc.
  const Gap arc = gapToSector(kLeaf, rect(30, 30, 60, 60));
  EXPECT_NEAR(arc.distance.inches(), std::sqrt(1800.0) - 30, 1e-6);
  EXPECT_NEAR(arc.from.x.inches(), 30 / std::sqrt(2.0), 1e-6);
  EXPECT_EQ(arc.to, at(30, 30));
  // A wall across the diagonal: the arc's own nearest point, not an end point.
  EXPECT_NEAR(gapToSector(kLeaf, {at(50, 0), at(0, 50), at(50, 50)}).distance.inches(),
              50 / std::sqrt(2.0) - 30, 1e-6);
  EXPECT_EQ(gapToSector(kLeaf, rect(-20, 5, -7, 10)).distance, 7_in);
  EXPECT_EQ(gapToSector(kLeaf, rect(10, -20, 15, -4)).distance, 4_in);
  EXPECT_EQ(gapToSector(kLeaf, rect(34, -20, 50, -3)).distance, 5_in);
  EXPECT_EQ(gapToSector(kLeaf, rect(32, -20, 50, 50)).distance, 2_in);
}

TEST(GapToSector, FlushIsTouchInsideIsOverlap) {
  for (const Outline& flush :
       {rect(30, 0, 60, 21), rect(-30, 0, 0, 21), rect(0, -5, 30, 0), rect(-5, 30, 40, 50)}) {
    EXPECT_EQ(gapToSector(kLeaf, flush).distance, 0_in);
    EXPECT_FALSE(gapToSector(kLeaf, flush).overlap);
  }
  EXPECT_TRUE(gapToSector(kLeaf, rect(10, 10, 12, 12)).overlap);
  EXPECT_TRUE(gapToSector(kLeaf, rect(-40, -40, 40, 40)).overlap);
  EXPECT_TRUE(gapToSector(kLeaf, rect(-5, 29.9, 40, 50)).overlap);
}

TEST(SectorOutline, StartsAtTheHingeAndEndsOnTheOpenTip) {
  const Outline out = sectorOutline(kLeaf, 16);
  ASSERT_EQ(out.size(), 18u);
  EXPECT_EQ(out.front(), kLeaf.hinge);
  EXPECT_EQ(out[1], at(30, 0));
  EXPECT_EQ(out.back(), at(0, 30));
}

}  // namespace
}  // namespace elbowroom
