#include "core/geometry/free_floor.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <numbers>

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }

Outline box(double x, double y, double w, double h, double turn = 0) {
  return rectangleOutline(in(w), in(h), {at(x + w / 2, y + h / 2), Angle::fromRadians(turn)});
}

// Closed forms: room, hole and radius of the largest circle.
struct ClosedForm {
  const char* name;
  Outline room;
  std::vector<Outline> obstacles;
  double radius;
};

class LargestCircle : public testing::TestWithParam<ClosedForm> {};

TEST_P(LargestCircle, MatchesTheClosedForm) {
  const ClosedForm& form = GetParam();
  const FreeFloor floor(form.room, form.obstacles);
  const Circle circle = floor.largestCircle();
  EXPECT_NEAR(circle.radius.inches(), form.radius, 0.005);
  EXPECT_LE(circle.radius, floor.clearanceAt(circle.center).distance);
}

const double kRoot2 = std::numbers::sqrt2;

INSTANTIATE_TEST_SUITE_P(
    ClosedForms, LargestCircle,
    testing::Values(ClosedForm{"rectangle", box(0, 0, 96, 120), {}, 48},
                    // In the inner corner's bisector: r + r / sqrt 2 ... = 60 (2 - sqrt 2).
                    ClosedForm{"ell",
                               {at(0, 0), at(120, 0), at(120, 60), at(60, 60), at(60, 120), at(0, 120)},
                               {},
                               60 * (2 - kRoot2)},
                    ClosedForm{"triangle", {at(0, 0), at(120, 0), at(0, 90)}, {}, 30},
                    ClosedForm{"centred hole", box(0, 0, 120, 120), {box(50, 50, 20, 20)}, 50 * (2 - kRoot2)},
                    // The circle in a corner of the room touches the flat side of the turned square.
                    ClosedForm{"hole at 45 degrees",
                               box(0, 0, 120, 120),
                               {box(50, 50, 20, 20, std::numbers::pi / 4)},
                               (60 * kRoot2 - 10) / (1 + kRoot2)},
                    // Two walls and the cut at 45 degrees: x = y = r, (156 - 2r) / sqrt 2 = r.
                    ClosedForm{"cut corner",
                               {at(0, 0), at(96, 0), at(96, 60), at(36, 120), at(0, 120)},
                               {},
                               156 / (2 + kRoot2)},
                    // In a corner of the walk round a block in which larger circles would have room.
                    ClosedForm{"large block", box(0, 0, 100, 100), {box(20, 20, 60, 60)}, 20 * (2 - kRoot2)},
                    ClosedForm{"turned square", box(0, 0, 100, 100, 0.3), {}, 50}),
    [](const auto& info) {
      std::string name = info.param.name;
      std::replace(name.begin(), name.end(), ' ', '_');
      return name;
    });

TEST(FreeFloor, HoldsNothingWithoutARoom) {
  const FreeFloor floor;
  EXPECT_EQ(floor.largestCircle().radius, Length{});
  EXPECT_FALSE(floor.nearestCircle(in(1), at(0, 0)));
  EXPECT_FALSE(floor.circleFit({at(0, 0), in(1)}).fits);
  EXPECT_FALSE(floor.rectangleFit(in(1), in(1), {at(0, 0), {}}).fits);
}

TEST(FreeFloor, HoldsNothingWhenCovered) {
  const FreeFloor floor(box(0, 0, 60, 60), {box(-5, -5, 40, 70), box(30, -5, 40, 70)});
  EXPECT_EQ(floor.largestCircle().radius, Length{});
  EXPECT_FALSE(floor.nearestCircle(in(2), at(30, 30)));
}

TEST(FreeFloor, MeasuresClearanceOnBothSidesOfABoundary) {
  const FreeFloor floor(box(0, 0, 96, 120), {box(40, 50, 20, 10), box(0, 0, 30, 20)});
  EXPECT_EQ(floor.clearanceAt(at(50, 45)).distance, in(5));
  EXPECT_EQ(floor.clearanceAt(at(50, 45)).obstacle, 0);
  EXPECT_EQ(floor.clearanceAt(at(50, 45)).nearest, at(50, 50));
  EXPECT_EQ(floor.clearanceAt(at(50, 58)).distance, in(-2));
  EXPECT_EQ(floor.clearanceAt(at(90, 60)).obstacle, -1);
  EXPECT_EQ(floor.clearanceAt(at(99, 60)).distance, in(-3));
}

// A fixture 36 in deep against one wall of a 96 in room leaves 60 in: an exact fit, flush on both sides.
TEST(FreeFloor, CountsAnExactFit) {
  const FreeFloor floor(box(0, 0, 96, 200), {box(0, 0, 36, 100), box(0, 100, 36, 100), box(-3, 40, 20, 90)});
  EXPECT_NEAR(floor.largestCircle().radius.inches(), 30, 0.001);
  const auto circle = floor.nearestCircle(in(60), at(10, 77));
  ASSERT_TRUE(circle);
  EXPECT_NEAR(circle->center.x.inches(), 66, 0.02);
  EXPECT_NEAR(circle->center.y.inches(), 77, 0.5);
  EXPECT_TRUE(floor.circleFit(*circle).fits);
  EXPECT_FALSE(floor.nearestCircle(in(60.05), at(10, 77)));
  const Fit fit = floor.circleFit({at(66, 77), in(30.25)});
  EXPECT_FALSE(fit.fits);
  EXPECT_EQ(fit.misses_by, in(0.25));
}

// Pythagoras: around the post's corner (50, 50) the nearest centre to it lies 30 in off on the line to
// `near`.
TEST(FreeFloor, FindsTheNearestCircleAroundACorner) {
  const FreeFloor floor(box(0, 0, 200, 200), {box(0, 0, 50, 50)});
  const auto circle = floor.nearestCircle(in(60), at(53, 54));
  ASSERT_TRUE(circle);
  EXPECT_NEAR(distance(circle->center, at(53, 54)).inches(), 25, 0.02);
  EXPECT_NEAR(circle->center.x.inches(), 68, 0.1);
  EXPECT_NEAR(circle->center.y.inches(), 74, 0.1);
}

}  // namespace
}  // namespace elbowroom
