#include "core/drawing/draw_elevation.h"

#include <gtest/gtest.h>

#include "tests/ui/rooms.h"

namespace elbowroom {
namespace {

using namespace literals;

TEST(WallStripDrawing, UnrollsTheWallsInTheirOrder) {
  const Plan plan = hallBath();
  const WallStripDrawing drawing = drawWallStrip(deriveLayout(plan, 0), {Length::fromInches(2)});
  ASSERT_EQ(drawing.walls.size(), 4U);
  // 96 + 60 + 96 + 60 in, each beginning where the one before ends.
  EXPECT_EQ(drawing.walls[1].x, 96_in);
  EXPECT_EQ(drawing.walls[2].x, 156_in);
  EXPECT_EQ(drawing.walls[3].x, 252_in);
  EXPECT_EQ(drawing.bounds.high.x, 312_in);
  EXPECT_EQ(drawing.ceiling, 96_in);
}

TEST(WallStripDrawing, ElementsStandWhereTheirFiguresSay) {
  const WallStripDrawing drawing = drawWallStrip(deriveLayout(hallBath(), 0), {Length::fromInches(2)});
  const auto boxOf = [&](const char* id, Length from, Length to) {
    DisplayList list;
    for (const DrawItem& item : drawing.list) {
      const Box box = boundsOf(DisplayList{item});
      if (item.source == ElementId{id} && box.low.x >= from && box.high.x <= to) list.push_back(item);
    }
    return boundsOf(list);
  };
  const Box window = boxOf("win", 0_in, 96_in);  // 24 wide at 48, sill 44, 36 high
  EXPECT_EQ(window.low, (Point{36_in, 44_in}));
  EXPECT_EQ(window.high, (Point{60_in, 80_in}));
  const Box vanity = boxOf("v", 156_in, 252_in);  // third wall: 156 + 75 +- 15, 34 high
  EXPECT_EQ(vanity.low, (Point{216_in, 0_in}));
  EXPECT_EQ(vanity.high, (Point{246_in, 34_in}));
  const Box bath_end = boxOf("b", 0_in, 96_in);  // its head end, 30 deep, in the corner of wall n
  EXPECT_EQ(bath_end.low, (Point{66_in, 0_in}));
  EXPECT_EQ(bath_end.high, (Point{96_in, 15_in}));
}

TEST(WallStripDrawing, AnUnstatedCeilingIsDashedAtEightFeet) {
  Plan plan = hallBath();
  plan.options.front().room.ceiling.height.reset();
  const WallStripDrawing drawing = drawWallStrip(deriveLayout(plan, 0), {Length::fromInches(2)});
  EXPECT_FALSE(drawing.ceiling_stated);
  EXPECT_EQ(drawing.ceiling, 96_in);
  EXPECT_TRUE(drawWallStrip(deriveLayout(emptyPlan(Unit::inches), 0), {Length::fromInches(2)}).list.empty());
}

}  // namespace
}  // namespace elbowroom
