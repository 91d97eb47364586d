// 2010 ADA Standards 305.7, figures 305.7.1 and 305.7.2: how deep and how wide the alcove around a clear
// floor space is.
#include "core/geometry/confinement.h"

#include <gtest/gtest.h>

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }
Outline box(double x, double y, double w, double h) {
  return {at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)};
}
// An alcove with its back at y = 0 that opens downwards into a wide room.
FreeFloor alcove(double width, double depth, std::vector<Outline> things = {}) {
  const double low = -depth - 100, left = -width / 2, right = width / 2;
  return FreeFloor({at(left, 0), at(right, 0), at(right, -depth), at(100, -depth), at(100, low),
                    at(-100, low), at(-100, -depth), at(left, -depth)},
                   std::move(things));
}
ApproachSpace forward() { return {at(0, 0), {0, -1}, in(30), in(48)}; }
ApproachSpace parallel() { return {at(0, 0), {0, -1}, in(48), in(30)}; }

TEST(Confinement, ForwardApproachInAnAlcove) {
  const Confinement deep = confinementOf(alcove(30, 25), forward(), in(6));
  EXPECT_EQ(deep.depth, in(25));
  EXPECT_EQ(deep.width, in(30));
  EXPECT_EQ(deep.left.gap, Length{});
  EXPECT_EQ(deep.right.depth, in(25));
  EXPECT_EQ(confinementOf(alcove(35, 25), forward(), in(6)).width, in(35));
  EXPECT_EQ(confinementOf(alcove(35, 24), forward(), in(6)).depth, in(24));
  const Confinement wide = confinementOf(alcove(36, 25), forward(), in(6));
  EXPECT_EQ(wide.depth, Length{});
  EXPECT_EQ(wide.width, in(36));
  EXPECT_EQ(wide.left.gap, in(3));
}

TEST(Confinement, ParallelApproachInAnAlcove) {
  EXPECT_EQ(confinementOf(alcove(59, 16), parallel(), in(12)).depth, in(16));
  EXPECT_EQ(confinementOf(alcove(59, 16), parallel(), in(12)).width, in(59));
  EXPECT_EQ(confinementOf(alcove(60, 16), parallel(), in(12)).depth, Length{});
}

TEST(Confinement, ThingsBesideCountAsWallsDo) {
  // A wall 2 in to the left (as seen looking out: at +x), a cabinet 20 deep 1 in to the right.
  const FreeFloor floor({at(-60, 0), at(17, 0), at(17, -90), at(-60, -90)}, {box(-40, -20, 24, 20)});
  const Confinement c = confinementOf(floor, forward(), in(6));
  EXPECT_EQ(c.left.gap, in(2));
  EXPECT_EQ(c.left.depth, in(90));
  EXPECT_EQ(c.right.gap, in(1));
  EXPECT_EQ(c.right.depth, in(20));
  EXPECT_EQ(c.depth, in(20)) << "beyond the cabinet only one side is shut";
  EXPECT_EQ(c.width, in(33));
}

TEST(Confinement, OneSideOrSlantedSides) {
  const FreeFloor open({at(-200, 0), at(15, 0), at(15, -90), at(-200, -90)}, {});
  EXPECT_EQ(confinementOf(open, forward(), in(6)).depth, Length{});
  EXPECT_EQ(confinementOf(open, forward(), in(6)).left.depth, in(90));
  // Sides that open from 30 wide at the back to 42 at 48: 36 wide at 24.
  const FreeFloor funnel({at(15, 0), at(21, -48), at(200, -48), at(200, -90), at(-200, -90), at(-200, -48),
                          at(-21, -48), at(-15, 0)},
                         {});
  EXPECT_NEAR(confinementOf(funnel, forward(), in(6)).depth.inches(), 24, 1e-4);
  // The same turned: the frame decides, not the plan's axes.
  const auto turned = [](double x, double y) { return at(50 + y, 70 - x); };
  const FreeFloor aside({turned(15, 0), turned(21, -48), turned(200, -48), turned(200, -90),
                         turned(-200, -90), turned(-200, -48), turned(-21, -48), turned(-15, 0)},
                        {});
  EXPECT_NEAR(confinementOf(aside, {turned(0, 0), {-1, 0}, in(30), in(48)}, in(6)).depth.inches(), 24, 1e-4);
}

}  // namespace
}  // namespace elbowroom
