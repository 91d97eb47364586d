// T-shaped turning space with knee space at one end, the other shapes of A117.1, any angle; and the clear
// floor space beyond a swing.
#include <gtest/gtest.h>

#include <numbers>

#include "core/geometry/beyond_sweep.h"
#include "core/geometry/free_floor.h"

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }
Angle deg(double v) { return Angle::fromDegrees(v); }
Outline box(double x, double y, double w, double h) {
  return {at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)};
}
Outline turned(const Outline& ring, double degrees) {
  Outline out;
  for (const Point& p : ring) {
    const Direction d = Direction{1, 0}.turned(deg(degrees));
    out.push_back(Point{} + p.x * d + p.y * d.left());
  }
  return out;
}

TEST(TurningShapes, OutlinesHaveTheAreasOfTheirCutOuts) {
  // A117.1-2017 304.3.2.1: cut-outs 16 x 24 less 8 in chamfers, 11 x 22, 12 x 20.
  const auto area = [](const TurningShape& s) {
    return areaOf(turningOutline(s, {at(7, 9), deg(31)})).squareInches();
  };
  EXPECT_NEAR(area(kTurningT2010), 60 * 60 - 2 * 12 * 24, 1e-3);
  EXPECT_NEAR(area(kTurningT2017First), 68 * 60 - 2 * (16 * 24 - 32), 1e-3);
  EXPECT_NEAR(area(kTurningT2017Second), 64 * 60 - 2 * 11 * 22, 1e-3);
  EXPECT_NEAR(area(kTurningT2017Third), 64 * 60 - 2 * 12 * 20, 1e-3);
}

TEST(TurningShapes, EachFitsItsOwnOutlineAndNothingNarrower) {
  for (const TurningShape& shape :
       {kTurningT2010, kTurningT2017First, kTurningT2017Second, kTurningT2017Third})
    for (const double turn : {0.0, 31.4, 123.456, 270.0}) {
      const Placed place{at(40, 50), deg(turn)};
      const auto found = FreeFloor(turningOutline(shape, place), {}).turningT(shape);
      ASSERT_TRUE(found) << turn;
      EXPECT_LT(distance(found->center, place.center), in(0.05));
      EXPECT_NEAR(found->turn.degrees(), turn, 0.05);
      TurningShape small = shape;
      small.across = shape.across - in(0.1);
      EXPECT_FALSE(FreeFloor(turningOutline(small, place), {}).turningT(shape)) << turn;
      small = shape;
      small.base_width = shape.base_width - in(0.1);
      EXPECT_FALSE(FreeFloor(turningOutline(small, place), {}).turningT(shape)) << turn;
    }
  // The chamfer is asked for.
  TurningShape square = kTurningT2017First;
  square.chamfer = {};
  EXPECT_TRUE(FreeFloor(turningOutline(square, {}), {}).turningT(square));
  EXPECT_FALSE(FreeFloor(turningOutline(square, {}), {}).turningT(kTurningT2017First));
}

// A room that is the T of 304.3.2, things with knee space over ends of it.
std::optional<PlacedTurning> tIn(double degrees, const std::vector<Outline>& things) {
  const Outline room = turned(turningTOutline({}), degrees);
  std::vector<Outline> bare;
  for (const Outline& thing : things) bare.push_back(turned(thing, degrees));
  return FreeFloor(room, bare).turningT(kTurningT2010, FreeFloor(room, std::vector<Outline>(bare.size())));
}
// The T points along +x: base from -30 to -6, left arm above y = 18, right arm below -18.
TEST(TurningTWithKnees, CountsThemAtOneEndOnly) {
  const Outline base = box(-30, -18, 17, 36), left = box(0, 20, 20, 10), right = box(-6, -30, 36, 11);
  for (const double degrees : {0.0, 77.7}) {
    const auto none = tIn(degrees, {});
    ASSERT_TRUE(none);
    EXPECT_EQ(none->under_knees, TurningEnd::none);
    const auto at_base = tIn(degrees, {base});
    ASSERT_TRUE(at_base);
    EXPECT_EQ(at_base->under_knees, TurningEnd::base);
    EXPECT_NEAR(at_base->place.turn.degrees(), degrees, 0.05);
    EXPECT_EQ(tIn(degrees, {left}).value().under_knees, TurningEnd::leftArm);
    EXPECT_EQ(tIn(degrees, {right}).value().under_knees, TurningEnd::rightArm);
    EXPECT_FALSE(tIn(degrees, {left, right}));
    EXPECT_FALSE(tIn(degrees, {base, left}));
    EXPECT_FALSE(tIn(degrees, {base, left, right}));
    // Deeper in than the end itself.
    EXPECT_FALSE(tIn(degrees, {box(0, 17, 20, 13)}));
    EXPECT_FALSE(tIn(degrees, {box(-30, -18, 25, 36)}));
  }
}

TEST(TurningTWithKnees, StillBlockedByWhatBlocksKnees) {
  const Outline room = turningTOutline({});
  const FreeFloor bare(room, {box(-30, -18, 17, 36)}), pedestal(room, {box(-30, -18, 6, 36)});
  EXPECT_FALSE(bare.turningT(kTurningT2010, pedestal));
}

TEST(RectangleSomewhere, FindsTheOneAngleThatFits) {
  // 30 x 48 in a hexagon around it that is not parallel to it anywhere, turned by 31.4 degrees.
  const Outline snug = turned(
      {at(-24, -15), at(0, -17), at(24, -15), at(25, 0), at(24, 15), at(0, 17), at(-24, 15), at(-25, 0)},
      31.4);
  const auto found = FreeFloor(snug, {}).rectangleSomewhere(in(48), in(30));
  ASSERT_TRUE(found);
  EXPECT_NEAR(std::remainder(found->turn.degrees() - 31.4, 180), 0, 0.2);
  EXPECT_TRUE(FreeFloor(snug, {}).rectangleFit(in(48), in(30), *found).fits);
  EXPECT_FALSE(FreeFloor(snug, {}).rectangleSomewhere(in(48.2), in(30.1)));
}

// A room of 60 x 66 whose door of 30 sweeps from the lower left corner: beyond it 30 x 48 lies along the top.
TEST(BeyondSweep, KeepsClearOfTheArcItself) {
  const Leaf leaf{at(0, 0), in(30), {1, 0}, deg(90)};
  const FreeFloor floor(box(0, 0, 60, 60), {});
  const auto found = beyondSweep(floor, {leaf}, in(48), in(30), {at(10, 10), deg(0)});
  ASSERT_TRUE(found);
  EXPECT_FALSE(gapToSector(leaf, rectangleOutline(in(48), in(30), *found)).overlap);
  EXPECT_FALSE(beyondSweep(FreeFloor(box(0, 0, 48, 59.9), {}), {leaf}, in(48), in(30), {at(10, 10), deg(0)}));
  EXPECT_TRUE(beyondSweep(FreeFloor(box(0, 0, 48, 60), {}), {leaf}, in(48), in(30), {at(10, 10), deg(0)}));
  // A 20 x 20 square whose corner just meets the arc at 45 degrees: room for it beyond the arc to a corner at
  // 30 / sqrt 2 + 20.
  const double side = 30 / std::numbers::sqrt2 + 20;
  const auto square = [&](double room) {
    return beyondSweep(FreeFloor(box(0, 0, room, room), {}), {leaf}, in(20), in(20), {at(5, 5), deg(0)});
  };
  EXPECT_TRUE(square(side));
  EXPECT_FALSE(square(side - 0.05));
  // A thing smaller than the sector is not hidden in it.
  EXPECT_FALSE(
      beyondSweep(FreeFloor(box(0, 0, 28, 28), {}), {{at(0, 0), in(40), {1, 0}, deg(90)}}, in(6), in(6), {}));
}

}  // namespace
}  // namespace elbowroom
