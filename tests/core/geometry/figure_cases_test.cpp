// Figures of the 2010 ADA Standards that are rectangles on a floor: each fits at its value, not 1 in below.
#include <gtest/gtest.h>

#include "core/geometry/free_floor.h"

namespace elbowroom {
namespace {

Point at(double x, double y) { return {Length::fromInches(x), Length::fromInches(y)}; }
Length in(double v) { return Length::fromInches(v); }
Outline box(double x, double y, double w, double h) {
  return {at(x, y), at(x + w, y), at(x + w, y + h), at(x, y + h)};
}
// The rectangle from (x, y), `w` along x and `h` along y.
Fit fitAt(const FreeFloor& floor, double x, double y, double w, double h) {
  return floor.rectangleFit(in(w), in(h), {at(x + w / 2, y + h / 2), {}});
}
bool fitsSomewhere(const FreeFloor& floor, double w, double h) {
  return floor.nearestRectangleAnyTurn(in(w), in(h), {at(30, 30), {}}).has_value();
}

// Figure 604.8.1.1: wheelchair accessible compartment, 60 by 59 with a floor-mounted water closet, 60 by 56
// with a wall-hung one.
TEST(FigureCases, F4Compartment) {
  const auto compartment = [](double width, double depth) { return FreeFloor(box(0, 0, width, depth), {}); };
  EXPECT_TRUE(fitsSomewhere(compartment(60, 59), 60, 59));
  const Fit shallow = fitAt(compartment(60, 58), 0, 0, 60, 59);
  EXPECT_FALSE(shallow.fits);
  EXPECT_EQ(shallow.misses_by, in(1));
  EXPECT_FALSE(fitsSomewhere(compartment(60, 58), 60, 59));
  EXPECT_FALSE(fitsSomewhere(compartment(59, 59), 60, 59));
  EXPECT_TRUE(fitsSomewhere(compartment(60, 56), 60, 56));
  EXPECT_FALSE(fitsSomewhere(compartment(60, 55), 60, 56));
}

// An alcove of that size at the top of a wide room, its back at y = 0 and its mouth at -depth.
FreeFloor alcove(double width, double depth) {
  const double low = -depth - 100, left = -width / 2, right = width / 2;
  const Outline room{at(left, 0),   at(right, 0),  at(right, -depth),  at(100, -depth),
                     at(100, low), at(-100, low), at(-100, -depth), at(left, -depth)};
  return FreeFloor(room, {});
}
// 305.7: confined on three sides, the space grows where the alcove is deeper than `deep`; `out`: from back.
Fit inAlcove(double width, double depth, double across, double deep, double grown, double out) {
  const double needed = depth > deep ? grown : across;
  return fitAt(alcove(width, depth), -needed / 2, -out, needed, out);
}

// Figure 305.7.1: forward approach, 30 by 48; 36 wide where the alcove is deeper than 24.
TEST(FigureCases, F5AlcoveForwardApproach) {
  const auto forward = [](double width, double depth) { return inAlcove(width, depth, 30, 24, 36, 48); };
  EXPECT_TRUE(forward(36, 25).fits);
  EXPECT_FALSE(forward(35, 25).fits);
  EXPECT_EQ(forward(35, 25).misses_by, in(0.5)) << "at each side";
  EXPECT_TRUE(forward(30, 24).fits);
  EXPECT_FALSE(forward(29, 24).fits);
}

// Figure 305.7.2: parallel approach, 48 by 30; 60 wide where the alcove is deeper than 15.
TEST(FigureCases, F6AlcoveParallelApproach) {
  const auto parallel = [](double width, double depth) { return inAlcove(width, depth, 48, 15, 60, 30); };
  EXPECT_TRUE(parallel(60, 16).fits);
  EXPECT_FALSE(parallel(59, 16).fits);
  EXPECT_TRUE(parallel(48, 15).fits);
  EXPECT_FALSE(parallel(47, 15).fits);
}

// Figure 304.3.2 (F7), base 24 and arms 12: rectangle_fit_test.cpp, TurningT.

// Figure 607.2: bath 60 by 30 along the wall y = 0, its controls at x = 0; clearance 60 by 30 before it. A
// lavatory may stand at the control end of it: whoever decides that needs to hear what reaches in, and where.
TEST(FigureCases, F8BathClearance) {
  const auto room = [](double depth, std::vector<Outline> more) {
    std::vector<Outline> all{box(0, 0, 60, 30)};
    all.insert(all.end(), more.begin(), more.end());
    return FreeFloor(box(0, 0, 60, 30 + depth), all);
  };
  const auto clearance = [](const FreeFloor& floor) { return fitAt(floor, 0, 30, 60, 30); };
  EXPECT_TRUE(clearance(room(30, {})).fits);
  const Fit narrow = clearance(room(29, {}));
  EXPECT_FALSE(narrow.fits);
  EXPECT_EQ(narrow.misses_by, in(1));
  EXPECT_EQ(narrow.obstacle, -1);

  const Fit control_end = clearance(room(60, {box(0, 40, 18, 20)}));
  EXPECT_EQ(control_end.obstacle, 1);
  EXPECT_LE(control_end.at.x, in(18));
  EXPECT_TRUE(fitAt(room(60, {box(0, 40, 18, 20)}), 18, 30, 42, 30).fits) << "the rest of it is free";
  const Fit head_end = clearance(room(60, {box(42, 40, 18, 20)}));
  EXPECT_FALSE(head_end.fits);
  EXPECT_EQ(head_end.obstacle, 1);
  EXPECT_GE(head_end.at.x, in(42));
}

// Table 404.2.4.1, front approaches: a door of 36 whose hinge side is at x = 0, in the wall y = 0; the side
// wall stands `beside` beyond the latch, the wall opposite `before` away. What there is of the space wanted.
FreeFloor beforeDoor(double beside, double before) {
  return FreeFloor({at(-40, 0), at(36 + beside, 0), at(36 + beside, before), at(-40, before)}, {});
}

// Figure 404.2.4.1 (a): pull side, 60 deep, 18 beside the latch.
TEST(FigureCases, F13FrontPull) {
  const auto pull = [](double beside, double before) {
    return fitAt(beforeDoor(beside, before), 0, 0, 36 + 18, 60);
  };
  EXPECT_TRUE(pull(18, 60).fits);
  EXPECT_FALSE(pull(17, 60).fits);
  EXPECT_EQ(pull(17, 60).misses_by, in(1));
  EXPECT_EQ(pull(17, 60).at.x, in(36 + 17));
  EXPECT_FALSE(pull(18, 59).fits);
  EXPECT_EQ(pull(18, 59).misses_by, in(1));
}

// Figure 404.2.4.1 (b) and (c): push side, 48 deep; with closer and latch 12 beside the latch.
TEST(FigureCases, F14FrontPush) {
  const auto push = [](double beside, double before, bool closer_and_latch) {
    return fitAt(beforeDoor(beside, before), 0, 0, 36 + (closer_and_latch ? 12 : 0), 48);
  };
  EXPECT_TRUE(push(0, 48, false).fits);
  EXPECT_FALSE(push(0, 47, false).fits);
  EXPECT_TRUE(push(12, 48, true).fits);
  EXPECT_FALSE(push(11, 48, true).fits);
  EXPECT_EQ(push(11, 48, true).misses_by, in(1));
  EXPECT_FALSE(push(0, 48, true).fits);
}

}  // namespace
}  // namespace elbowroom
