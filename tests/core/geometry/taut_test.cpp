// Taut strings by hand: straight, round a corner of the room, round the end of a screen (Pythagoras).
#include "core/geometry/taut.h"

#include <gtest/gtest.h>

#include <cmath>

namespace elbowroom {
namespace {

using namespace literals;

const Outline kSquare{{0_in, 96_in}, {96_in, 96_in}, {96_in, 0_in}, {0_in, 0_in}};
// An L: the square without its upper right quarter; the inner corner at (48, 48).
const Outline kL{{0_in, 96_in}, {48_in, 96_in}, {48_in, 48_in}, {96_in, 48_in}, {96_in, 0_in}, {0_in, 0_in}};

double way(Point from, Segment to, const Outline& room, const std::vector<Segment>& screens = {}) {
  const auto found = tautWay(from, to, room, screens);
  if (!found) return std::nan("");
  double sum = 0;
  for (std::size_t i = 0; i + 1 < found->points.size(); ++i)
    sum += distance(found->points[i], found->points[i + 1]).inches();
  EXPECT_NEAR(sum, found->length.inches(), 1e-5);
  return found->length.inches();
}
Segment spot(Length x, Length y) { return {{x, y}, {x, y}}; }

TEST(Taut, StraightToAPointAndToTheFootOnALine) {
  EXPECT_NEAR(way({0_in, 0_in}, spot(30_in, 40_in), kSquare), 50, 1e-6);
  EXPECT_NEAR(way({10_in, 96_in}, {{0_in, 60_in}, {36_in, 60_in}}, kSquare), 36, 1e-6);
  EXPECT_NEAR(way({66_in, 96_in}, {{0_in, 56_in}, {36_in, 56_in}}, kSquare), 50, 1e-6);  // 30, 40 to its end
}

TEST(Taut, AlongAWallAndOnAnother) {
  EXPECT_NEAR(way({0_in, 96_in}, spot(96_in, 96_in), kSquare), 96, 1e-6);
  EXPECT_NEAR(way({48_in, 96_in}, spot(48_in, 48_in), kL), 48, 1e-6);
}

TEST(Taut, RoundTheInnerCornerOfAnL) {
  // (24, 96) to (96, 24) by (48, 48): twice hypot(24, 48), straight would leave the room.
  EXPECT_NEAR(way({24_in, 96_in}, spot(96_in, 24_in), kL), 2 * std::hypot(24, 48), 1e-5);
  EXPECT_EQ(tautWay({24_in, 96_in}, spot(96_in, 24_in), kL, {})->points.at(1), (Point{48_in, 48_in}));
  // Through the corner itself it is straight.
  EXPECT_NEAR(way({48_in, 90_in}, spot(48_in, 10_in), kL), 80, 1e-6);
}

TEST(Taut, ToALineThatIsPartlyBehindTheCorner) {
  // The line x = 60 from y = 0 to 48, seen from (30, 90): by (48, 48) to its upper end, 12 beyond.
  EXPECT_NEAR(way({30_in, 90_in}, {{60_in, 0_in}, {60_in, 48_in}}, kL), std::hypot(18, 42) + 12, 1e-5);
}

TEST(Taut, RoundTheEndOfAScreen) {
  const Segment glass{{36_in, 96_in}, {36_in, 60_in}};
  // (18, 96) to (54, 96): down to (36, 60) and up again.
  EXPECT_NEAR(way({18_in, 96_in}, spot(54_in, 96_in), kSquare, {glass}), 2 * std::hypot(18, 36), 1e-5);
  EXPECT_NEAR(way({18_in, 60_in}, spot(54_in, 60_in), kSquare, {glass}), 36, 1e-6);  // touches its end
  EXPECT_NEAR(way({36_in, 96_in}, spot(36_in, 60_in), kSquare, {glass}), 36, 1e-6);  // along it
}

TEST(Taut, NoSlitWhereTwoScreensMeet) {
  // Two sides of glass about the upper left corner, open to the left at (0, 60) to (20, 60).
  const std::vector<Segment> glass{{{36_in, 96_in}, {36_in, 60_in}}, {{36_in, 60_in}, {20_in, 60_in}}};
  // From (18, 96) by (20, 60) to (54, 60): 36.06, then 34; through the meeting point it would be 56 in all.
  EXPECT_NEAR(way({18_in, 96_in}, spot(54_in, 60_in), kSquare, glass), std::hypot(2, 36) + 34, 0.02);
  EXPECT_NEAR(way({18_in, 96_in}, spot(54_in, 40_in), kSquare, glass), std::hypot(2, 36) + std::hypot(34, 20), 1e-5);
}

TEST(Taut, NoWay) {
  const Segment wall_to_wall{{0_in, 48_in}, {96_in, 48_in}};
  EXPECT_EQ(tautWay({10_in, 90_in}, spot(10_in, 10_in), kSquare, {wall_to_wall}), std::nullopt);
  EXPECT_EQ(tautWay({120_in, 90_in}, spot(10_in, 10_in), kSquare, {}), std::nullopt);
  EXPECT_EQ(tautWay({1_in, 1_in}, spot(2_in, 2_in), {}, {}), std::nullopt);
}

}  // namespace
}  // namespace elbowroom
