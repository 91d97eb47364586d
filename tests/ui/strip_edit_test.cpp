// The wall strip by mouse and key: drag, snap, cross a corner, type, resize, nudge, delete, undo.
#include <gtest/gtest.h>

#include <QLineEdit>
#include <QScrollBar>

#include "tests/ui/strip_driver.h"
#include "ui/walls/strip_menu.h"

namespace elbowroom::ui {
namespace {

using namespace literals;

using StripEditTest = StripDriver;

TEST_F(StripEditTest, DragsTheMirrorInOneUndoStep) {
  // 20 in to the left and 8 up, from a place 3 px off its centre.
  drag(px(231, 55) + QPointF(3, 2), px(211, 63) + QPointF(3, 2));
  EXPECT_EQ(mirror().wall, ElementId{"s"});
  EXPECT_NEAR(mirror().along.inches(), 55, 0.6);
  EXPECT_NEAR(mirror().bottom.inches(), 48, 0.6);
  EXPECT_EQ(mirror().along.nm() % (0.5_in).nm(), 0);
  EXPECT_TRUE(session.history().canUndo());
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, 40_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripEditTest, SnapsToTheCentrelineOfTheVanity) {
  drag(px(231, 55), px(200, 60));
  ASSERT_NE(mirror().along, 75_in);
  // 0.8 in off the centreline.
  const WallItem before = mirror();
  const QPointF at = strip.placeOf({"m"}).center();
  drag(at, QPointF(px(156 + 75.8, 0).x(), at.y()));
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, before.bottom);
}

TEST_F(StripEditTest, ShiftSwitchesSnappingOff) {
  drag(px(231, 55), px(230.3, 55.7), Qt::ShiftModifier);
  EXPECT_NE(mirror().along, 75_in);
  EXPECT_NEAR(mirror().along.inches(), 74.3, 0.5);
}

TEST_F(StripEditTest, EscapeTakesADragBack) {
  press(px(231, 55));
  for (int i = 1; i < 9; ++i) moveTo(px(231 - 5 * i, 55 + i), Qt::LeftButton);
  ASSERT_NE(mirror().along, 75_in);
  QTest::keyClick(&strip, Qt::Key_Escape);
  EXPECT_EQ(mirror().along, 75_in);
  release(px(190, 60));
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripEditTest, CrossesTheCornerToTheNeighbourWall) {
  drag(px(231, 55), px(140, 55));  // into the east wall, whose right end is at 156
  EXPECT_EQ(mirror().wall, ElementId{"e"});
  EXPECT_NEAR(mirror().along.inches(), 44, 0.6);  // 140 - 96
  EXPECT_TRUE(session.history().canUndo());
  // And the strip shows it where the plan has it.
  EXPECT_NEAR(strip.placeOf({"m"}).center().x(), strip.map().toPx({96_in + mirror().along, {}}).x(), 0.01);
}

TEST_F(StripEditTest, TypedFigureSetsTheHeightAboveTheFloor) {
  session.select({{"m"}});
  QTest::keyClick(&strip, Qt::Key_4);
  ASSERT_TRUE(entry()->isVisible());
  QTest::keyClick(entry(), Qt::Key_4);
  QTest::keyClick(entry(), Qt::Key_Return);
  EXPECT_EQ(mirror().bottom, 44_in);
  EXPECT_EQ(mirror().along, 75_in);
  // D marks the next one: from the left corner.
  QTest::keyClick(&strip, Qt::Key_D);
  QTest::keyClicks(&strip, "5");
  QTest::keyClicks(entry(), "0 1/2");
  QTest::keyClick(entry(), Qt::Key_Return);
  EXPECT_EQ(mirror().along, 62.5_in);
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, 44_in);
}

TEST_F(StripEditTest, TypingWhileDraggingIsTheDragsOneStep) {
  press(px(231, 55));
  for (int i = 1; i < 6; ++i) moveTo(px(231 - 5 * i, 55), Qt::LeftButton);
  const Length dragged = mirror().along;
  ASSERT_NE(dragged, 75_in);
  QTest::keyClicks(&strip, "5");
  QTest::keyClicks(entry(), "1");
  QTest::keyClick(entry(), Qt::Key_Return);
  release(px(206, 55));
  EXPECT_EQ(mirror().bottom, 51_in);
  EXPECT_EQ(mirror().along, dragged);
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, 40_in);
  EXPECT_FALSE(session.history().canUndo());
}

TEST_F(StripEditTest, AFigureThatDoesNotFitStaysInTheField) {
  session.select({{"m"}});
  QTest::keyClicks(&strip, "9");
  QTest::keyClicks(entry(), "0");
  QTest::keyClick(entry(), Qt::Key_Return);
  EXPECT_TRUE(entry()->isVisible());
  EXPECT_EQ(mirror().bottom, 40_in);
  QTest::keyClick(entry(), Qt::Key_Escape);
  EXPECT_FALSE(entry()->isVisible());
}

TEST_F(StripEditTest, HandlesResize) {
  session.select({{"m"}});
  const QRectF place = strip.placeOf({"m"});
  drag(QPointF(place.right(), place.center().y()), QPointF(px(156 + 91, 0).x(), place.center().y()));
  EXPECT_EQ(mirror().width, 27_in);  // from 63 to the vanity's right edge at 90
  EXPECT_NEAR((mirror().along - mirror().width / 2).inches(), 63, 1e-6);
  EXPECT_EQ(mirror().height, 30_in);
  session.undo();
  EXPECT_EQ(mirror().width, 24_in);
  // The upper left corner to the ceiling and the left corner of the wall.
  drag(place.topLeft(), px(156, 97));
  EXPECT_EQ(mirror().width, 87_in);
  EXPECT_EQ(mirror().height, 56_in);
  EXPECT_EQ(mirror().bottom, 40_in);
}

TEST_F(StripEditTest, ArrowsNudgeAndMergeIntoOneStep) {
  session.select({{"m"}});
  for (int i = 0; i < 3; ++i) QTest::keyClick(&strip, Qt::Key_Left);
  QTest::keyClick(&strip, Qt::Key_Up, Qt::ShiftModifier);
  QTest::keyClick(&strip, Qt::Key_Up, Qt::ControlModifier);
  EXPECT_EQ(mirror().along, 73.5_in);
  EXPECT_EQ(mirror().bottom, 46.0625_in);
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
  EXPECT_EQ(mirror().bottom, 40_in);
  for (int i = 0; i < 40; ++i) QTest::keyClick(&strip, Qt::Key_Up, Qt::ControlModifier);
  EXPECT_EQ(mirror().bottom, 66_in);  // under the ceiling
}

TEST_F(StripEditTest, DeleteRemovesAndUndoBringsBack) {
  session.select({{"m"}});
  QTest::keyClick(&strip, Qt::Key_Delete);
  EXPECT_EQ(findWallItem(session.option(), {"m"}), nullptr);
  session.undo();
  EXPECT_NE(findWallItem(session.option(), {"m"}), nullptr);
}

TEST_F(StripEditTest, ABandSelectsWhatLiesWhollyInIt) {
  // Over the mirror and not the vanity below it.
  drag(px(160, 90), px(250, 37));
  EXPECT_EQ(session.selection(), std::set<ElementId>{{"m"}});
}

TEST_F(StripEditTest, AWindowMovesAlongAndUp) {
  const Opening before = *findOpening(session.option(), {"win"});
  const QPointF at = strip.placeOf({"win"}).center();
  drag(at, at + QPointF(-strip.map().px(10_in), -strip.map().px(6_in)));
  const Opening& after = *findOpening(session.option(), {"win"});
  EXPECT_NEAR((before.along - after.along).inches(), 10, 1.6);
  EXPECT_NEAR((*after.sill - *before.sill).inches(), 6, 1.6);
  session.undo();
  EXPECT_EQ(*findOpening(session.option(), {"win"}), before);
}

TEST_F(StripEditTest, DoorsAndFixturesGoAlongTheirWall) {
  const QPointF door = strip.placeOf({"d1"}).center();
  drag(door, door + QPointF(strip.map().px(-10_in), -30));
  EXPECT_NEAR(findOpening(session.option(), {"d1"})->along.inches(), 30, 1.6);
  const QPointF toilet = strip.placeOf({"wc"}).center();
  drag(toilet, toilet + QPointF(strip.map().px(-12_in), -30));
  EXPECT_NEAR(std::get<OnWall>(findFixture(session.option(), {"wc"})->placement).along.inches(), 33, 2);
}

TEST_F(StripEditTest, SeveralMoveTogether) {
  WallItem light = mirror();
  light.id = {"l"};
  light.kind = "light";
  light.bottom = 75_in;
  light.height = 5_in;
  session.perform(PutWallItems{{light}}, "Add light");
  session.select({{"m"}, {"l"}});
  drag(px(231, 55), px(210, 50));
  const WallItem& moved = *findWallItem(session.option(), {"l"});
  EXPECT_EQ(moved.along, mirror().along);
  EXPECT_EQ(moved.bottom - mirror().bottom, 35_in);
  EXPECT_NEAR(mirror().along.inches(), 54, 0.6);
  session.undo();
  EXPECT_EQ(mirror().along, 75_in);
}

TEST_F(StripEditTest, ControlAndWheelZoomAboutThePointer) {
  const QPointF at = px(231, 55);
  const Point before = strip.map().toPlan(at);
  QWheelEvent wheel(at, strip.viewport()->mapToGlobal(at), {}, {0, 480}, Qt::NoButton, Qt::ControlModifier,
                    Qt::NoScrollPhase, false);
  QApplication::sendEvent(strip.viewport(), &wheel);
  EXPECT_GT(strip.zoom(), 1.5);
  EXPECT_GT(strip.verticalScrollBar()->maximum(), 0);
  EXPECT_NEAR(strip.map().toPlan(at).x.inches(), before.x.inches(), 0.5);
  EXPECT_NEAR(strip.map().toPlan(at).y.inches(), before.y.inches(), 0.5);
  strip.zoomToFit();
  EXPECT_EQ(strip.verticalScrollBar()->maximum(), 0);
}

TEST_F(StripEditTest, TheMenuActsInOneStepAndOnlyWhereItCan) {
  session.select({{"m"}});
  QMenu menu;
  fillStripMenu(menu, strip, {{"s"}, 75_in});
  const auto action = [&](const QString& text) {
    for (QAction* each : menu.actions())
      if (each->text() == text) return each;
    return static_cast<QAction*>(nullptr);
  };
  EXPECT_FALSE(action("Align tops")->isEnabled());
  EXPECT_FALSE(action("Move into the nearest stud bay")->isEnabled());
  action("Counter to ceiling")->trigger();
  EXPECT_EQ(mirror().bottom + mirror().height, 96_in);
  session.undo();
  EXPECT_EQ(mirror().height, 30_in);
  EXPECT_FALSE(session.history().canUndo());
  action("Back the whole wall")->trigger();
  EXPECT_EQ(yesNo(findWall(session.option(), {"s"})->facts, "backed"), true);
}

TEST_F(StripEditTest, HoveringAMarkLightsItsFinding) {
  // Something is wrong with the toilet in this room, so it carries a mark.
  ASSERT_FALSE(strip.scene().marks().empty());
  const StripScene::Mark mark = strip.scene().marks().front();
  moveTo((strip.map().toPx(mark.box.low) + strip.map().toPx(mark.box.high)) / 2, Qt::NoButton);
  EXPECT_EQ(session.litFinding(), mark.finding);
}

}  // namespace
}  // namespace elbowroom::ui
