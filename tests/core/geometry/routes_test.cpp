#include "core/geometry/widest_ways.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "core/geometry/free_floor.h"

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }
Outline box(double x, double y, double w, double h) {
  return {at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)};
}

Route oneRoute(const Outline& room, const std::vector<Outline>& obstacles, Point from, Point to) {
  return WidestWays(FreeFloor(room, obstacles)).from(from, {to}).at(0);
}

TEST(WidestRoutes, PassesAGapBetweenTwoCabinets) {
  const Route route =
      oneRoute(box(0, 0, 100, 200), {box(0, 90, 35, 20), box(70, 95, 30, 20)}, at(50, 20), at(50, 180));
  EXPECT_TRUE(route.reachable);
  EXPECT_EQ(route.width, in(35));
  EXPECT_NEAR(route.narrowest.x.inches(), 52.5, 1e-3);
  EXPECT_NEAR(route.narrowest.y.inches(), 102.5, 1e-3);  // they face each other from 95 to 110
  EXPECT_EQ(distance(route.sides.a, route.sides.b), in(35));
}

// Two corners 30 across and 40 along: 50 apart, less than the 60 left beside the walls.
TEST(WidestRoutes, MeasuresBetweenCorners) {
  const Route route =
      oneRoute(box(0, 0, 130, 300), {box(0, 0, 50, 100), box(80, 140, 50, 160)}, at(90, 20), at(30, 280));
  EXPECT_EQ(route.width, in(50));
  EXPECT_EQ(route.narrowest, at(65, 120));
}

TEST(WidestRoutes, TakesTheWiderOfTwoWays) {
  const Route route = oneRoute(box(0, 0, 100, 200), {box(20, 80, 50, 20)}, at(50, 20), at(50, 180));
  EXPECT_EQ(route.width, in(30));
  EXPECT_GT(route.narrowest.x, in(70));
}

TEST(WidestRoutes, FindsNoneThroughFlushFixtures) {
  const std::vector<Outline> row{box(0, 90, 50, 20), box(50, 90, 50, 20)};
  const Route route = oneRoute(box(0, 0, 100, 200), row, at(50, 20), at(50, 180));
  EXPECT_FALSE(route.reachable);
  EXPECT_EQ(route.width, Length{});
}

TEST(WidestRoutes, ShowsASlitOfAQuarterInch) {
  const Route route =
      oneRoute(box(0, 0, 100, 200), {box(0, 90, 50, 20), box(50.25, 90, 50, 20)}, at(50, 20), at(50, 180));
  EXPECT_TRUE(route.reachable);
  EXPECT_EQ(route.width, in(0.25));
}

// In one clear rectangle the disc that serves both ends is the largest one of the room.
TEST(WidestRoutes, IsLimitedByTheRoomAlone) {
  const Route route = oneRoute(box(0, 0, 60, 100), {}, at(30, 1), at(30, 99));
  EXPECT_EQ(route.width, in(60));
}

// Discs that touch either end are at most 58 in across; that of the whole room holds both.
TEST(WidestRoutes, StaysInOneDiscThatHoldsBothEnds) {
  const Route route = oneRoute(box(0, 0, 100, 100), {}, at(50, 30), at(50, 70));
  EXPECT_NEAR(route.width.inches(), 100, 0.004);
  EXPECT_LE(route.width, in(100));
}

// A point in a 20 in wide niche: the disc in the room need only touch it within its own radius, the niche's
// width counts for a point deep inside.
TEST(WidestRoutes, NeedOnlyReachWithinTheDiscsRadius) {
  const std::vector<Outline> wall{box(0, 100, 40, 50), box(60, 100, 40, 50)};
  const Outline room = box(0, 0, 100, 150);
  EXPECT_EQ(oneRoute(room, wall, at(50, 50), at(50, 130)).width, in(20));
  // A disc over the mouth with radius r reaches sagitta r - sqrt(r^2 - 100) into the niche: 50 in gives 1.01
  // in.
  EXPECT_NEAR(oneRoute(room, wall, at(50, 50), at(50, 101)).width.inches(), 100, 0.02);
  // 2 in deep: r = (10^2 + 2^2) / (2 * 2) = 26 in.
  EXPECT_NEAR(oneRoute(room, wall, at(50, 50), at(50, 102)).width.inches(), 52, 0.02);
}

// One thing about a bay 50 in wide with a mouth of 24 in: the mouth lies between two corners of the same
// thing.
TEST(WidestRoutes, GoesIntoTheBayOfOneThing) {
  const Outline thing{at(20, 100), at(38, 100), at(38, 110), at(25, 110), at(25, 160), at(75, 160),
                      at(75, 110), at(62, 110), at(62, 100), at(80, 100), at(80, 170), at(20, 170)};
  const Route route = oneRoute(box(0, 0, 100, 200), {thing}, at(50, 20), at(50, 135));
  EXPECT_EQ(route.width, in(24));
  EXPECT_EQ(route.narrowest.x, in(50));
  EXPECT_GE(route.narrowest.y, in(100));
  EXPECT_LE(route.narrowest.y, in(110));
}

// A lamp base drawn within a cabinet is nothing on its own; a stool between two cabinets makes two ways of
// one.
TEST(WidestRoutes, CountsWhatLiesWithinAnotherOnce) {
  const std::vector<Outline> things{box(0, 90, 35, 20), box(10, 95, 5, 5), box(70, 90, 30, 20),
                                    box(48, 96, 6, 6)};
  EXPECT_EQ(oneRoute(box(0, 0, 100, 200), things, at(50, 20), at(50, 180)).width, in(16));
}

TEST(WidestRoutes, MovesTargetsOutOfObstacles) {
  const std::vector<Outline> things{box(0, 90, 35, 20), box(70, 95, 30, 20), box(40, 180, 20, 20)};
  const auto routes = WidestWays(FreeFloor(box(0, 0, 100, 200), things))
                          .from(at(50, 0), {at(50, 180), at(50, 183), at(50, -9)});
  EXPECT_EQ(routes[0].width, in(35));
  EXPECT_EQ(routes[1].width, in(35));
  EXPECT_EQ(routes[2].width.inches(),
            oneRoute(box(0, 0, 100, 200), things, at(50, 0), at(50, 0.01)).width.inches());
}

// A target 1 in and 1 in from the sides of a corner lies within discs up to r: 2 (r - 1)^2 = r^2.
TEST(WidestRoutes, ReachesIntoACornerOnlyWithSmallDiscs) {
  const Route route = oneRoute(box(0, 0, 100, 200), {box(40, 180, 20, 20)}, at(50, 20), at(39, 199));
  EXPECT_NEAR(route.width.inches(), 2 * (2 + std::numbers::sqrt2), 1e-4);
}

TEST(WidestRoutes, AnswersNothingWithoutFloor) {
  EXPECT_FALSE(oneRoute({}, {}, at(0, 0), at(1, 1)).reachable);
  EXPECT_FALSE(oneRoute(box(0, 0, 50, 50), {box(-1, -1, 60, 60)}, at(10, 10), at(40, 40)).reachable);
}

// The plan in 0.1 mm, off the search's own grid, and turned: the gap stays what it is.
TEST(WidestRoutes, KeepsTheGapInMillimetresAndTurned) {
  const auto mm = [](double x, double y) {
    return Point{Length::fromMillimetres(x), Length::fromMillimetres(y)};
  };
  const auto mmBox = [&](double x, double y, double w, double h) {
    return Outline{mm(x, y), mm(x + w, y), mm(x + w, y + h), mm(x, y + h)};
  };
  const Route route =
      oneRoute(mmBox(0.1, 0, 3000.3, 4000), {mmBox(0.1, 2000, 1033.3, 500), mmBox(1933.4, 2000, 1067, 500)},
               mm(1500, 300), mm(1500, 3500));
  EXPECT_EQ(route.width, Length::fromMillimetres(900));
  const Angle turn = Angle::fromDegrees(31.7);
  const auto turned = [&](Outline o) {
    for (Point& p : o)
      p = at(0, 0) + p.x * Direction::fromAngle(turn) + p.y * Direction::fromAngle(turn).left();
    return o;
  };
  const Route other =
      oneRoute(turned(box(0, 0, 100, 200)), {turned(box(0, 90, 35, 20)), turned(box(70, 90, 30, 20))},
               turned({at(50, 20)})[0], turned({at(50, 180)})[0]);
  EXPECT_NEAR(other.width.inches(), 35, 1e-5);
}

}  // namespace
}  // namespace elbowroom
