// Drives the plan with real mouse and key events on the offscreen platform.
#include "ui/session/selected.h"
#include "ui/canvas/plan_canvas.h"

#include <gtest/gtest.h>

#include <QApplication>
#include <QLineEdit>
#include <QtTest>

namespace elbowroom::ui {
namespace {

using namespace literals;

class CanvasTest : public ::testing::Test {
 protected:
  CanvasTest() : session(emptyPlan(Unit::inches)), canvas(session) {
    canvas.resize(800, 700);
    canvas.show();
    [[maybe_unused]] const bool shown = QTest::qWaitForWindowExposed(&canvas);
  }

  QPoint px(Length x, Length y) const { return canvas.map().toPx({x, y}).toPoint(); }
  void click(Length x, Length y) {
    QTest::mouseMove(&canvas, px(x, y));
    QTest::mouseClick(&canvas, Qt::LeftButton, {}, px(x, y));
  }
  void drag(Length x, Length y, Length to_x, Length to_y) {
    QTest::mouseMove(&canvas, px(x, y));
    QTest::mousePress(&canvas, Qt::LeftButton, {}, px(x, y));
    for (int i = 1; i <= 8; ++i) {
      moveHeld(x + (to_x - x).scaled(i / 8.0), y + (to_y - y).scaled(i / 8.0));
    }
  }
  void moveHeld(Length x, Length y) {
    const QPointF at = canvas.map().toPx({x, y});
    QMouseEvent event(QEvent::MouseMove, at, canvas.mapToGlobal(at), Qt::NoButton, Qt::LeftButton, Qt::NoModifier);
    QApplication::sendEvent(&canvas, &event);
  }
  void drop(Length x, Length y) { QTest::mouseRelease(&canvas, Qt::LeftButton, {}, px(x, y)); }
  void type(const QString& text) {
    QTest::keyClicks(&canvas, text.left(1));
    QLineEdit* entry = canvas.findChild<QLineEdit*>();
    ASSERT_TRUE(entry && entry->isVisible());
    QTest::keyClicks(entry, text.mid(1));
    QTest::keyClick(entry, Qt::Key_Return);
  }

  // A room 96 x 60 drawn with four clicks, lower left corner at the origin.
  void drawRoom() {
    canvas.startRoom();
    click(0_in, 0_in);
    click(96_in, 0_in);
    click(96_in, 60_in);
    click(0_in, 60_in);
    click(0_in, 0_in);
  }

  const Finding* finding(const std::string& rule, Outcome outcome) const {
    for (const Finding& f : session.report().findings)
      if (f.rule == rule && f.outcome == outcome) return &f;
    return nullptr;
  }

  Session session;
  PlanCanvas canvas;
};

TEST_F(CanvasTest, ARoomIsDrawnWallByWallAndRunsClockwise) {
  drawRoom();
  ASSERT_EQ(session.layout().walls.size(), 4u);
  EXPECT_TRUE(canvas.choosing());
  EXPECT_NEAR(session.layout().room_area.squareFeet(), 40.0, 0.2);
  EXPECT_LT(signedAreaOf(session.layout().room), Area{});
  EXPECT_EQ(session.history().undoLabel(), "Draw room");
}

TEST_F(CanvasTest, AWallLengthIsTypedWhileDrawing) {
  canvas.startRoom();
  click(0_in, 0_in);
  QTest::mouseMove(&canvas, px(70_in, 0_in));
  type("7' 6 1/4\"");
  QTest::mouseMove(&canvas, px(90.25_in, 50_in));
  type("62.5");
  click(0_in, 62.5_in);
  click(0_in, 0_in);
  ASSERT_EQ(session.layout().walls.size(), 4u);
  std::set<Length> lengths;
  for (const WallFrame& wall : session.layout().walls) lengths.insert(wall.length);
  EXPECT_TRUE(lengths.contains(90.25_in));
  EXPECT_TRUE(lengths.contains(62.5_in));
}

TEST_F(CanvasTest, AToiletDraggedTooNearAnotherThingShowsAFindingThatVanishesAgain) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(30_in, 14_in);
  ASSERT_EQ(session.option().fixtures.size(), 1u);
  const auto* on_wall = std::get_if<OnWall>(&session.option().fixtures[0].placement);
  const Length along = on_wall ? on_wall->along : Length{};
  ASSERT_TRUE(on_wall) << "a toilet dropped near a wall stands with its back on it";
  EXPECT_FALSE(finding("toilet-centreline-side", Outcome::shortfall));

  drag(30_in, 14_in, 12_in, 14_in);
  const Finding* while_dragging = finding("toilet-centreline-side", Outcome::shortfall);
  ASSERT_TRUE(while_dragging) << "the finding must appear before the button is released";
  EXPECT_FALSE(while_dragging->places.empty());
  moveHeld(40_in, 14_in);
  EXPECT_FALSE(finding("toilet-centreline-side", Outcome::shortfall));
  drop(40_in, 14_in);
  EXPECT_FALSE(session.dragging());

  // Dragging is one step of the history however many moves it took.
  session.undo();
  const auto* back = std::get_if<OnWall>(&session.option().fixtures[0].placement);
  ASSERT_TRUE(back);
  EXPECT_EQ(back->along, along);
}

TEST_F(CanvasTest, EscapeDuringADragPutsEverythingBack) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(40_in, 14_in);
  const Plan before = session.plan();
  drag(40_in, 14_in, 70_in, 14_in);
  EXPECT_NE(session.plan(), before);
  QTest::keyClick(&canvas, Qt::Key_Escape);
  EXPECT_EQ(session.plan(), before);
  drop(70_in, 14_in);
  EXPECT_EQ(session.plan(), before);
}

TEST_F(CanvasTest, AnOpeningSlidesAlongItsWallAndChangesHandAndUndoGivesAllBack) {
  drawRoom();
  const Plan drawn = session.plan();
  canvas.startPlacing("door:hinged");
  click(48_in, 60_in);
  ASSERT_EQ(session.option().openings.size(), 1u);
  const Length along = session.option().openings[0].along;
  drag(48_in, 62_in, 60_in, 62_in);
  drop(60_in, 62_in);
  EXPECT_NE(session.option().openings[0].along, along);
  const Hand hand = session.option().openings[0].hinge;
  canvas.selectTool().flipSelected();
  EXPECT_NE(session.option().openings[0].hinge, hand);

  while (session.history().canUndo() && session.plan() != drawn) session.undo();
  EXPECT_EQ(session.plan(), drawn);
  EXPECT_TRUE(session.history().canRedo());
}

TEST_F(CanvasTest, ADistanceIsTypedForTheSelectedFixture) {
  drawRoom();
  canvas.startPlacing("fixture:vanity");
  click(40_in, 10_in);
  canvas.setFocus();
  type("12 1/2");
  const auto gaps = sideGaps(session.layout(), session.option().fixtures[0].id);
  ASSERT_FALSE(gaps.empty());
  EXPECT_TRUE(std::any_of(gaps.begin(), gaps.end(), [](const SideGap& gap) { return abs(gap.distance - 12.5_in) < 0.001_in; }));
}

TEST_F(CanvasTest, ATypedDistanceWhileDraggingIsTheDragsOneStep) {
  drawRoom();
  canvas.startPlacing("fixture:vanity");
  click(40_in, 10_in);
  const Plan before = session.plan();
  drag(40_in, 10_in, 55_in, 10_in);
  type("20");
  drop(55_in, 10_in);
  const auto gaps = sideGaps(session.layout(), session.option().fixtures[0].id);
  EXPECT_TRUE(std::any_of(gaps.begin(), gaps.end(), [](const SideGap& gap) { return abs(gap.distance - 20_in) < 0.001_in; }));
  session.undo();
  EXPECT_EQ(session.plan(), before);
}

TEST_F(CanvasTest, EnterAfterATypedDistanceKeepsTheSelection) {
  drawRoom();
  canvas.startPlacing("fixture:vanity");
  click(20_in, 10_in);
  canvas.startPlacing("fixture:toilet");
  click(60_in, 10_in);
  const auto chosen = session.selection();
  ASSERT_EQ(chosen.size(), 1u);
  canvas.setFocus();
  type("6");
  EXPECT_EQ(session.selection(), chosen);
  type("8");
  EXPECT_EQ(session.selection(), chosen);
}

TEST_F(CanvasTest, WhatIsCarriedStaysOutOfOtherOptionsAndReplacesNothing) {
  drawRoom();
  canvas.startPlacing("fixture:bath");
  click(48_in, 20_in);
  ASSERT_EQ(session.option().fixtures.size(), 1u);
  const Plan found = session.plan();
  ASSERT_TRUE(session.perform(AddOption{"Another", 0}, "New option"));
  ASSERT_TRUE(session.perform(RemoveElements{{session.option().fixtures[0].id}}, "Delete bath"));
  const Plan before = session.plan();

  canvas.startPlacing("fixture:bath");
  QTest::mouseMove(&canvas, px(48_in, 30_in));
  ASSERT_EQ(session.option().fixtures.size(), 1u) << "carried";
  session.setOption(0);
  EXPECT_EQ(session.plan(), before) << "neither left behind nor taken along";
  EXPECT_TRUE(canvas.choosing());

  canvas.startPlacing("fixture:bath");
  click(48_in, 45_in);
  EXPECT_EQ(session.option().fixtures.size(), 2u) << "the bath as found is still there";
}

TEST_F(CanvasTest, AnEditFromAPanelWhileSomethingIsCarriedDoesNotPutItDown) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  QTest::mouseMove(&canvas, px(48_in, 30_in));
  ASSERT_TRUE(session.perform(SetTitle{"Titled meanwhile"}, "Set title"));
  EXPECT_TRUE(session.option().fixtures.empty());
  EXPECT_EQ(session.plan().title, "Titled meanwhile");
}

TEST_F(CanvasTest, UndoWhileDrawingTakesACornerBackAndNothingElse) {
  drawRoom();
  session.undo();
  const Plan empty = session.plan();
  canvas.startRoom();
  click(0_in, 0_in);
  click(96_in, 0_in);
  click(96_in, 60_in);
  canvas.undo();
  EXPECT_EQ(session.plan(), empty);
  EXPECT_TRUE(session.history().canRedo()) << "the history was not touched";
  click(96_in, 50_in);
  click(0_in, 50_in);
  click(0_in, 0_in);
  EXPECT_NEAR(session.layout().room_area.squareFeet(), 96 * 50 / 144.0, 0.2);
}

TEST_F(CanvasTest, WallsPointedAtTenDegreesOffSquareAreSquare) {
  canvas.startRoom();
  click(0_in, 0_in);
  QTest::mouseMove(&canvas, px(60_in, 10_in));
  type("96");
  QTest::mouseMove(&canvas, px(104_in, 50_in));
  type("60");
  click(0_in, 60_in);
  click(0_in, 0_in);
  ASSERT_EQ(session.layout().walls.size(), 4u);
  EXPECT_EQ(session.layout().room_area, 96_in * 60_in);
}

TEST_F(CanvasTest, AFurnishedRoomIsNotDrawnOverAndSaysSoAtOnce) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(48_in, 14_in);
  QSignalSpy refused(&session, &Session::refused);
  canvas.startRoom();
  EXPECT_EQ(refused.size(), 1);
  EXPECT_TRUE(canvas.choosing());
}

TEST_F(CanvasTest, WhatIsPutIntoTheRoomAsFoundIsThereAlready) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(48_in, 14_in);
  EXPECT_EQ(session.option().fixtures[0].status, Status::keep);
  ASSERT_TRUE(session.perform(AddOption{"Another", 0}, "New option"));
  canvas.startPlacing("fixture:basin");
  click(20_in, 50_in);
  EXPECT_EQ(session.option().fixtures.back().status, Status::fresh);
}

TEST_F(CanvasTest, ShiftSwitchesSnappingOff) {
  drawRoom();
  canvas.startPlacing("fixture:cabinet");
  QTest::mouseMove(&canvas, px(48_in, 30_in));
  const QPointF at = canvas.map().toPx({48.2_in, 30.3_in});
  QMouseEvent move(QEvent::MouseMove, at, canvas.mapToGlobal(at), Qt::NoButton, Qt::NoButton, Qt::ShiftModifier);
  QApplication::sendEvent(&canvas, &move);
  QMouseEvent press(QEvent::MouseButtonPress, at, canvas.mapToGlobal(at), Qt::LeftButton, Qt::LeftButton, Qt::ShiftModifier);
  QApplication::sendEvent(&canvas, &press);
  ASSERT_EQ(session.layout().fixtures.size(), 1u);
  EXPECT_NEAR(session.layout().fixtures[0].center.x.inches(), 48.2, 0.02);
  EXPECT_NEAR(session.layout().fixtures[0].center.y.inches(), 30.3, 0.02);
}

TEST_F(CanvasTest, TheTurningCircleSaysWhetherItFitsAndJumpsToWhereItDoes) {
  drawRoom();
  canvas.showStandIn(StandIn::Kind::circle);
  StandIn& circle = canvas.standIn();
  EXPECT_TRUE(circle.fit(session.layout()).fits) << "60 in circle in the middle of a room 60 in deep";
  drag(circle.center.x, circle.center.y, circle.center.x, circle.center.y + 6_in);
  drop(circle.center.x, circle.center.y);
  const Fit off = circle.fit(session.layout());
  EXPECT_FALSE(off.fits);
  EXPECT_NEAR(off.misses_by.inches(), 6, 0.2);
  EXPECT_TRUE(circle.verdict(session, Unit::inches).contains("misses by"));
  canvas.jumpStandIn();
  EXPECT_TRUE(circle.fit(session.layout()).fits);
}

TEST_F(CanvasTest, AHandleTurnsWhatStandsFree) {
  drawRoom();
  canvas.startPlacing("fixture:cabinet");
  const QPointF at = canvas.map().toPx({48_in, 30_in});
  QMouseEvent press(QEvent::MouseButtonPress, at, canvas.mapToGlobal(at), Qt::LeftButton, Qt::LeftButton, Qt::ShiftModifier);
  QApplication::sendEvent(&canvas, &press);
  ASSERT_TRUE(std::holds_alternative<Standing>(session.option().fixtures[0].placement));
  const Point center = session.layout().fixtures[0].center;
  const auto handle = turnerOf(session.layout(), session.option().fixtures[0].id, canvas.map().fromPx(22));
  ASSERT_TRUE(handle);
  drag(handle->x, handle->y, center.x + 20_in, center.y);
  drop(center.x + 20_in, center.y);
  // The front, which faced -y, now faces +x: a quarter turn counter-clockwise.
  EXPECT_EQ(std::get<Standing>(session.option().fixtures[0].placement).turn, 90_deg);
  EXPECT_EQ(session.layout().fixtures[0].center, center);
}

TEST_F(CanvasTest, TheWheelZoomsAboutTheCursor) {
  drawRoom();
  const QPointF cursor(300, 260);
  const Point before = canvas.map().toPlan(cursor);
  QWheelEvent wheel(cursor, canvas.mapToGlobal(cursor), {}, {0, 240}, Qt::NoButton, Qt::NoModifier, Qt::NoScrollPhase, false);
  const double scale = canvas.map().px_per_inch;
  QApplication::sendEvent(&canvas, &wheel);
  EXPECT_GT(canvas.map().px_per_inch, scale * 1.2);
  const Point after = canvas.map().toPlan(cursor);
  EXPECT_LT(distance(before, after), 0.01_in);
}

TEST_F(CanvasTest, TabWalksTheElementsAndDeleteRemoves) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(40_in, 14_in);
  session.select({});
  canvas.setFocus();
  for (int i = 0; i < 5; ++i) QTest::keyClick(&canvas, Qt::Key_Tab);
  ASSERT_EQ(session.selection().size(), 1u);
  EXPECT_EQ(*session.selection().begin(), session.option().fixtures[0].id);
  removeSelected(session);
  EXPECT_TRUE(session.option().fixtures.empty());
}

TEST_F(CanvasTest, WhatIsShownBelongsToThePlanShown) {
  drawRoom();
  canvas.startPlacing("fixture:toilet");
  click(40_in, 14_in);
  drag(40_in, 14_in, 20_in, 14_in);
  // Whatever the drag did last, report and layout are those of this very plan.
  const Layout fresh = deriveLayout(session.plan(), session.optionIndex());
  const Report expected = check(fresh, choiceOf(session.plan()));
  ASSERT_EQ(expected.findings.size(), session.report().findings.size());
  for (std::size_t i = 0; i < expected.findings.size(); ++i) {
    EXPECT_EQ(expected.findings[i].rule, session.report().findings[i].rule);
    EXPECT_EQ(expected.findings[i].measured, session.report().findings[i].measured);
  }
  EXPECT_EQ(fresh.fixtures[0].center, session.layout().fixtures[0].center);
  drop(20_in, 14_in);
}

}  // namespace
}  // namespace elbowroom::ui
