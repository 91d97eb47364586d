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

TEST_F(WallStripTest, TabGoesThroughEverythingInReadingOrder) {
  strip.setFocus();
  std::vector<std::string> order;
  for (int i = 0; i < 5; ++i) {
    QTest::keyClick(&strip, Qt::Key_Tab);
    ASSERT_EQ(session.selection().size(), 1U);
    order.push_back(session.selection().begin()->text);
  }
  EXPECT_EQ(order, (std::vector<std::string>{"n", "win", "b", "e", "s"}));
  QTest::keyClick(&strip, Qt::Key_Escape);
  EXPECT_TRUE(session.selection().empty());
}

}  // namespace
}  // namespace elbowroom::ui
