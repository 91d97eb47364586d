#include <gtest/gtest.h>

#include <QScrollBar>
#include <QTest>

#include "tests/ui/rooms.h"
#include "ui/session/session.h"
#include "ui/walls/wall_strip.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

struct WallStripTest : testing::Test {
  Session session{hallBath()};
  WallStrip strip{session};
  void SetUp() override {
    strip.resize(700, 170);
    strip.show();
  }
  void click(const char* id, Qt::KeyboardModifiers keys = {}) {
    QTest::mouseClick(strip.viewport(), Qt::LeftButton, keys, strip.placeOf({id}).center().toPoint());
  }
};

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
      const elbowroom::Box box = boundsOf(DisplayList{item});
      if (item.source == ElementId{id} && box.low.x >= from && box.high.x <= to) list.push_back(item);
    }
    return boundsOf(list);
  };
  const elbowroom::Box window = boxOf("win", 0_in, 96_in);  // 24 wide at 48, sill 44, 36 high
  EXPECT_EQ(window.low, (Point{36_in, 44_in}));
  EXPECT_EQ(window.high, (Point{60_in, 80_in}));
  const elbowroom::Box vanity = boxOf("v", 156_in, 252_in);  // third wall: 156 + 75 +- 15, 34 high
  EXPECT_EQ(vanity.low, (Point{216_in, 0_in}));
  EXPECT_EQ(vanity.high, (Point{246_in, 34_in}));
  const elbowroom::Box bath_end = boxOf("b", 0_in, 96_in);  // its head end, 30 deep, in the corner of wall n
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

TEST_F(WallStripTest, ClickSelectsThingsAndWalls) {
  click("wc");
  EXPECT_EQ(session.selection(), std::set<ElementId>{{"wc"}});
  click("win", Qt::ShiftModifier);
  EXPECT_EQ(session.selection(), (std::set<ElementId>{{"wc"}, {"win"}}));
  const QRectF wall = strip.placeOf({"n"});
  QTest::mouseClick(strip.viewport(), Qt::LeftButton, {}, (wall.topLeft() + QPointF(8, 8)).toPoint());
  EXPECT_EQ(session.selection(), std::set<ElementId>{{"n"}});
  QTest::mouseClick(strip.viewport(), Qt::LeftButton, {}, QPoint(1, 1));
  EXPECT_TRUE(session.selection().empty());
}

TEST_F(WallStripTest, TheMirrorOverTheVanityIsItsOwnThing) {
  click("m");
  EXPECT_EQ(session.selection(), std::set<ElementId>{{"m"}});
}

TEST_F(WallStripTest, SelectingInThePlanScrollsToIt) {
  strip.resize(200, 170);
  QTest::qWait(1);
  ASSERT_GT(strip.horizontalScrollBar()->maximum(), 0);
  ASSERT_GT(strip.placeOf({"d1"}).left(), strip.viewport()->width());
  session.select({{"d1"}});
  EXPECT_GE(strip.placeOf({"d1"}).left(), 0);
  EXPECT_LE(strip.placeOf({"d1"}).right(), strip.viewport()->width());
}

TEST_F(WallStripTest, ArrowsGoThroughEverythingInReadingOrder) {
  strip.setFocus();
  std::vector<std::string> order;
  for (int i = 0; i < 5; ++i) {
    QTest::keyClick(&strip, Qt::Key_Right);
    ASSERT_EQ(session.selection().size(), 1U);
    order.push_back(session.selection().begin()->text);
  }
  EXPECT_EQ(order, (std::vector<std::string>{"n", "win", "b", "e", "s"}));
  QTest::keyClick(&strip, Qt::Key_Escape);
  EXPECT_TRUE(session.selection().empty());
}

}  // namespace
}  // namespace elbowroom::ui
