#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/free_floor.h"

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }
Angle deg(double v) { return Angle::fromDegrees(v); }
Outline box(double x, double y, double w, double h) {
  return {at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)};
}

TEST(RectangleFit, SaysHowDeepTheWorstThingReaches) {
  const FreeFloor floor(box(0, 0, 100, 100), {box(60, 40, 10, 10)});
  EXPECT_TRUE(floor.rectangleFit(in(30), in(48), {at(15, 24), {}}).fits) << "flush in the corner";
  const Fit wall = floor.rectangleFit(in(30), in(48), {at(14.5, 24), {}});
  EXPECT_FALSE(wall.fits);
  EXPECT_EQ(wall.misses_by, in(0.5));
  EXPECT_EQ(wall.obstacle, -1);
  EXPECT_EQ(wall.at.x, in(0));
  // The post's left side at 60 reaches 2 in into a rectangle that ends at 62.
  const Fit post = floor.rectangleFit(in(40), in(30), {at(42, 45), {}});
  EXPECT_EQ(post.misses_by, in(2));
  EXPECT_EQ(post.obstacle, 0);
  EXPECT_EQ(post.at.x, in(60));
  // The long side turned upright ends at x = 57.
  EXPECT_TRUE(floor.rectangleFit(in(40), in(30), {at(42, 45), deg(90)}).fits);
}

TEST(RectangleFit, ForgivesContactOnly) {
  const FreeFloor floor(box(0, 0, 60, 60), {});
  EXPECT_TRUE(floor.rectangleFit(in(30), in(48), {at(15 - 1.0 / 64, 24), {}}).fits);
  EXPECT_FALSE(floor.rectangleFit(in(30), in(48), {at(15 - 1.5 / 64, 24), {}}).fits);
}

TEST(RectangleFit, SeesWhatLiesWhollyInsideIt) {
  const FreeFloor floor(box(0, 0, 100, 100), {box(49, 49, 2, 2)});
  // The middle of a 40 x 30 is 15 from its nearest side.
  EXPECT_EQ(floor.rectangleFit(in(40), in(30), {at(50, 50), {}}).misses_by, in(15));
}

TEST(RectangleFit, SeesThatItLiesInsideAnObstacleOrOutside) {
  const FreeFloor floor(box(0, 0, 100, 100), {box(0, 0, 60, 60)});
  const Fit buried = floor.rectangleFit(in(20), in(10), {at(30, 30), {}});
  EXPECT_EQ(buried.misses_by, in(5));
  EXPECT_EQ(buried.obstacle, 0);
  EXPECT_FALSE(floor.rectangleFit(in(20), in(10), {at(130, 30), {}}).fits);
}

// A wall at 45 degrees that cuts a corner off at c from the corner reaches c / sqrt 2 deep (half the cut-off
// right triangle's hypotenuse, seen from either side).
TEST(RectangleFit, MeasuresAnAngledWall) {
  const FreeFloor floor({at(0, 0), at(100, 0), at(100, 40), at(40, 100), at(0, 100)}, {});
  const double c = 4;
  const double corner = 70 + c / std::numbers::sqrt2;
  const Fit fit = floor.rectangleFit(in(20), in(20), {at(corner - 10, corner - 10), {}});
  EXPECT_NEAR(fit.misses_by.inches(), c / std::numbers::sqrt2, 1e-6);
}

TEST(NearestRectangle, MovesToTheNearestFlushPlace) {
  const FreeFloor floor(box(0, 0, 96, 120), {box(0, 0, 30, 20), box(30, 0, 20, 20)});
  const auto placed = floor.nearestRectangle(in(30), in(48), {at(20, 30), deg(0)});
  ASSERT_TRUE(placed);
  // Up by 14: 20 + 24 = 44; x needs no change.
  EXPECT_NEAR(placed->center.x.inches(), 20, 0.02);
  EXPECT_NEAR(placed->center.y.inches(), 44, 0.02);
  EXPECT_EQ(placed->turn, deg(0));
  EXPECT_EQ(floor.rectangleFit(in(30), in(48), *placed).misses_by, Length{});
}

TEST(NearestRectangle, StaysWhenItFits) {
  const FreeFloor floor(box(0, 0, 96, 120), {});
  const Placed here{at(40.25, 60.5), deg(17)};
  const auto placed = floor.nearestRectangle(in(30), in(48), here);
  ASSERT_TRUE(placed);
  EXPECT_EQ(placed->center, here.center);
}

// The far side is nearer than any place on this side of the cabinet.
TEST(NearestRectangle, CrossesToTheOtherSideOfAnObstacle) {
  const FreeFloor floor(box(0, 0, 60, 200), {box(0, 50, 60, 20)});
  const auto placed = floor.nearestRectangle(in(30), in(48), {at(30, 62), deg(90)});
  ASSERT_TRUE(placed);
  EXPECT_NEAR(placed->center.y.inches(), 70 + 15, 0.02);
}

TEST(NearestRectangle, FindsAnAlleyThatJustFits) {
  const FreeFloor exact(box(0, 0, 200, 100), {box(-5, 0, 180, 35), box(0, 65, 175, 40)});
  const auto placed = exact.nearestRectangle(in(100), in(30), {at(60, 20), deg(0)});
  ASSERT_TRUE(placed);
  EXPECT_NEAR(placed->center.y.inches(), 50, 0.02);
  const FreeFloor short_by(box(0, 0, 175, 100), {box(-5, 0, 180, 35), box(0, 64.9, 175, 40)});
  EXPECT_FALSE(short_by.nearestRectangle(in(100), in(30), {at(60, 20), deg(0)}));
}

TEST(NearestRectangle, NeedsTheTurnInATurnedRoom) {
  const FreeFloor floor(rectangleOutline(in(50), in(32), {at(50, 50), deg(33.3)}), {});
  EXPECT_FALSE(floor.nearestRectangle(in(48), in(30), {at(50, 50), deg(0)}));
  const auto placed = floor.nearestRectangleAnyTurn(in(48), in(30), {at(50, 50), deg(0)});
  ASSERT_TRUE(placed);
  EXPECT_NEAR(placed->turn.degrees(), 33.3, 3);
  EXPECT_FALSE(floor.nearestRectangleAnyTurn(in(48), in(34), {at(50, 50), deg(0)}));
}

// The published rooms are drawn with y down from the plumbing wall; here y is up from the opposite wall.
// A water closet: tank 20 x 8, bowl 14 wide with a round front.
Outline toilet(double center_x, double rear, double front) {
  Outline o{at(center_x - 7, rear - 8), at(center_x - 10, rear - 8), at(center_x - 10, rear),
            at(center_x + 10, rear),    at(center_x + 10, rear - 8), at(center_x + 7, rear - 8)};
  for (int i = 0; i <= 12; ++i) {
    const double a = std::numbers::pi * i / 12;
    o.push_back(at(center_x + 7 * std::cos(a), front + 7 - 7 * std::sin(a)));
  }
  return o;
}
// What a leaf sweeps, drawn outside the arc so that nothing is won.
Outline leafSweep(double hinge_x, double hinge_y, double width, double toward_x) {
  Outline o{at(hinge_x, hinge_y)};
  const int steps = 48;
  for (int i = 0; i <= steps; ++i) {
    const double a = std::numbers::pi / 2 * i / steps;
    o.push_back(at(hinge_x + toward_x * width * std::cos(a), hinge_y + width * std::sin(a)));
  }
  return o;
}

// DOJ Guidance on the 2010 ADA Standards, plan 2B: 84 x 78, the 30 x 48 beyond the swing is drawn at 45
// degrees.
FreeFloor plan2B() {
  const double h = 78;
  return FreeFloor(box(0, 0, 84, h),
                   {toilet(16, h, h - 29.2), box(60.2, h - 18, 20.5, 18), leafSweep(24.4, 0, 36, 1)});
}
TEST(DojPlan2B, HoldsTheClearFloorSpaceBeyondTheSwingOnlyTilted) {
  const FreeFloor floor = plan2B();
  for (const double turn : {0.0, 90.0})
    EXPECT_FALSE(floor.nearestRectangle(in(48), in(30), {at(55, 45), deg(turn)})) << turn;
  const auto placed = floor.nearestRectangleAnyTurn(in(48), in(30), {at(55, 45), deg(0)});
  ASSERT_TRUE(placed);
  EXPECT_TRUE(floor.rectangleFit(in(48), in(30), *placed).fits);
  // The drawn one, moved by no more than the drawing's half inch, or turned a little.
  const auto drawn = floor.nearestRectangleAnyTurn(in(48), in(30), {at(55.1, 78 - 33.3), deg(-45)});
  ASSERT_TRUE(drawn);
  EXPECT_LT(distance(drawn->center, at(55.1, 78 - 33.3)), in(1.5));
}

// Plan 2C: alcove for the lavatory; the drawn space has its long side 38 degrees from the y axis.
FreeFloor plan2C() {
  const auto up = [](double y) { return 78 - y; };
  return FreeFloor(
      {at(0, up(18)), at(44, up(18)), at(44, up(0)), at(84, up(0)), at(84, up(78)), at(0, up(78))},
      {toilet(16, up(18), up(47.2)), box(52.5, up(18), 20.5, 18), leafSweep(80, 0, 36, -1)});
}
TEST(DojPlan2C, HoldsTheClearFloorSpaceBeyondTheSwingOnlyTilted) {
  const FreeFloor floor = plan2C();
  for (const double turn : {0.0, 90.0})
    EXPECT_FALSE(floor.nearestRectangle(in(48), in(30), {at(39, 31), deg(turn)})) << turn;
  const auto placed = floor.nearestRectangleAnyTurn(in(48), in(30), {at(39, 31), deg(90)});
  ASSERT_TRUE(placed);
  EXPECT_TRUE(floor.rectangleFit(in(48), in(30), *placed).fits);
}

// Bar and base measured one by one.
bool holdsT(const FreeFloor& floor, Placed t) {
  const Direction u = Direction::fromAngle(t.turn);
  return floor.rectangleFit(in(36), in(60), {t.center + in(12) * u, t.turn}).fits &&
         floor.rectangleFit(in(60), in(36), t).fits;
}

// Plan 3: "meets both" with the T; a circle without knee space stays under 60 in.
TEST(DojPlan3, HoldsTheTThoughNotTheCircle) {
  const double h = 69;
  const FreeFloor floor(box(0, 0, 84, h), {toilet(16, h, h - 29.5), box(60.4, h - 18, 20.5, 18)});
  EXPECT_FALSE(floor.nearestCircle(in(60), at(42, 30)));
  EXPECT_NEAR(2 * floor.largestCircle().radius.inches(), 55.2, 0.5);
  const auto placed = floor.turningT();
  ASSERT_TRUE(placed);
  EXPECT_TRUE(holdsT(floor, *placed));
  // The drawn one: base x 24.6-60.4, bar along the door wall (read off the drawing to half an inch).
  EXPECT_TRUE(holdsT(floor, {at(42.3, h - 38.6), deg(270)}));
}

// 2010 Standards figure 304.3.2: a room that is just the T.
Outline tRoom(double turn, double base, double arm) {
  const Direction u = Direction::fromAngle(deg(turn)), v = u.left();
  const auto p = [&](double x, double y) { return at(50, 50) + in(x)*u + in(y)*v; };
  return {p(-6 - base, -18), p(-6, -18),      p(-6, -18 - arm), p(30, -18 - arm),
          p(30, 18 + arm),   p(-6, 18 + arm), p(-6, 18),        p(-6 - base, 18)};
}
TEST(TurningT, FitsItsOwnOutlineAtAnyTurn) {
  for (const double turn : {0.0, 90.0, 180.0, 270.0, 45.0, 17.3, 200.123}) {
    const auto placed = FreeFloor(tRoom(turn, 24, 12), {}).turningT();
    ASSERT_TRUE(placed) << turn;
    EXPECT_NEAR(placed->turn.degrees(), turn, 0.01);
    EXPECT_LT(distance(placed->center, at(50, 50)), in(0.05));
  }
}
TEST(TurningT, NeedsTheBaseAndBothArms) {
  EXPECT_FALSE(FreeFloor(tRoom(0, 23, 12), {}).turningT());
  EXPECT_FALSE(FreeFloor(tRoom(0, 24, 11), {}).turningT());
  EXPECT_FALSE(FreeFloor(box(0, 0, 59, 200), {}).turningT());
  EXPECT_TRUE(FreeFloor(box(0, 0, 60, 60), {}).turningT());
}
TEST(TurningT, OutlineHasTheRightArea) {
  // 60 x 36 + 24 x 36 sq in
  EXPECT_NEAR(areaOf(turningTOutline({at(3, 4), deg(12)})).squareInches(), 3024, 1e-3);
  EXPECT_NEAR(areaOf(rectangleOutline(in(30), in(48), {at(3, 4), deg(12)})).squareInches(), 1440, 1e-3);
}

}  // namespace
}  // namespace elbowroom
